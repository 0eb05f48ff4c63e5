/** The kinds of document that can be made, and what each is for. */
export const kinds = {
  handout: 'the lessons, with figures and worked examples',
  problems: 'problem sheets with room to write, with numbers of their own for each learner',
  key: 'answer keys: method, answer, accepted range, marks, slips and checks',
  cards: 'shop cards for the bench, one for each job of the course',
} as const;

/** The name of a kind. */
export type Kind = keyof typeof kinds;

export const kindNames = Object.keys(kinds) as Kind[];
