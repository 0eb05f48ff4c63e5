/** A length that is found. */
export const mm = (symbol: string, name: string) => ({ symbol, name, unit: 'mm' });
