/** What a helper of a lesson's text takes. */
export interface HelperShape {
  /** How many values stand after its name. */
  readonly values: number;
  /** Names that may follow, `places=3`; `any` for a figure, which has its own. */
  readonly options: readonly string[] | 'any';
  /** A block is put in the place of its whole line. */
  readonly block: boolean;
  /** How it is written, for hints. */
  readonly example: string;
}

const inline = (example: string, ...options: string[]): HelperShape => ({
  values: 1,
  options,
  block: false,
  example,
});

/** The helpers that a lesson's text may use. What each puts in stands in the sheets. */
export const helperShapes: Readonly<Record<string, HelperShape>> = {
  mm: inline('{{mm module}}', 'places'),
  length: inline('{{length wheel.outsideDiameter}}', 'places'),
  number: inline('{{number ratio places=3}}', 'places'),
  angle: inline('{{angle wheel.anglePerTooth}}', 'places'),
  list: inline('{{list circles}}'),
  moves: inline('{{moves indexing}}'),
  worked: {
    values: 1,
    options: ['show'],
    block: true,
    example: '{{worked "wheel.blank" show="outsideDiameter"}}',
  },
  figure: { values: 1, options: 'any', block: true, example: '{{figure "wheel-blank" teeth=teeth}}' },
  ref: inline('{{ref "wheel-blank"}}'),
  problems: { values: 0, options: [], block: true, example: '{{problems}}' },
};
