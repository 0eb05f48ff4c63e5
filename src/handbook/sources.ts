/** One bibliography; a record cites a key, so the list of sources prints itself. */
export const sources = {
  'cutter-table':
    'A cutter maker’s wheel and pinion dimension table, “to BS 978 Part 2, NHS 56702 and 56703” (web page, read 2026)',
  'cycloidal-article': 'H. Sparks, Designing Cycloidal Gears, 2006, revised 2013 (from memory)',
  'bs978-2': 'BS 978-2:1952, Fine pitch gears: cycloidal type (as commonly reported, from memory)',
  iso54: 'ISO 54:1996, Modules (from memory)',
  'rose-1887': 'J. Rose, Modern Machine-Shop Practice, vol. I, 1887, pp. 71–74',
  'speed-table': 'Cutting Speeds, University of Arizona instrument shop (web page, read 2026)',
  groover: 'M. P. Groover, Fundamentals of Modern Manufacturing, milling problem (answers from memory)',
  derived: 'Elementary geometry and arithmetic',
  practice: 'Common practice, no source',
} as const;

/** A key of the bibliography. */
export type SourceKey = keyof typeof sources;
