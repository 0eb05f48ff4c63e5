/** Values that each calculation of an area answers, by its name. */
export type Sensible = Readonly<Record<string, Readonly<Record<string, unknown>>>>;
