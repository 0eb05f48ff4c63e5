/**
 * A number as SVG text; the one place where a drawing is rounded.
 * Four decimals of a millimetre: below any printer, above last-bit noise of Math.sin. `+ 0` turns -0 into 0.
 */
export const decimal = (value: number): string => String(+value.toFixed(4) + 0);
