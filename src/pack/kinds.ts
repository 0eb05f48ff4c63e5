/** The kinds of document that can be made, and what each is for. */
export const kinds = {
  book: 'the course book: contents, lessons with their problems, glossary, symbols, sources and index; one for the class',
  handout: 'the lessons, with figures and worked examples',
  problems: 'problem sheets with room to write, with numbers of their own for each learner',
  key: 'answer keys: method, answer, accepted range, marks, slips and checks; beside each its data, as JSON',
  cards:
    'shop cards for the bench: the set-up card of each job; with --only cards also those for sector arms, centring, tally, diagnosis, brass and guards, to laminate',
  grid: 'a key to the whole class: every learner’s answers on a page or two; with --learners or --versions',
  marks: 'a mark sheet for the class, and the same for a spreadsheet; with --learners or --versions',
  practice:
    'pages to practise on, without a network: an index and a page a lesson; only when it is asked for',
  sheets:
    'reference sheets for the wall, by the kit’s equipment, each with its figures for a spreadsheet; only when it is asked for',
  templates:
    'templates at true scale to cut by, each with its outline for a cutting machine; only when it is asked for',
  qti: 'the problems for another program: a package of QTI 3.0; only when it is asked for',
} as const;

/** The name of a kind. */
export type Kind = keyof typeof kinds;

export const kindNames = Object.keys(kinds) as Kind[];

/** Kinds of which nothing is printed: they are made only when they are asked for, and need no browser. */
export const unprinted: ReadonlySet<Kind> = new Set(['practice', 'qti']);

/** Kinds that are about a class as a whole: they need a list of learners, or versions. */
export const classKinds: readonly Kind[] = ['grid', 'marks'];

/** Kinds for the workshop rather than the class: they are made only when they are asked for. */
const lasting: ReadonlySet<Kind> = new Set(['sheets', 'templates']);

/** What is made when no kinds are named. */
export const printedKinds = kindNames.filter((kind) => !unprinted.has(kind) && !lasting.has(kind));
