import type { Part } from '../page.js';

/** What stands after the lessons: the name of its pages, which is its anchor too, and its title. */
export const BACK = {
  glossary: { page: 'book-glossary', title: 'Glossary' },
  symbols: { page: 'book-symbols', title: 'Symbols' },
  sources: { page: 'book-sources', title: 'Sources' },
  index: { page: 'book-index', title: 'Index of terms' },
} as const;

/** The parts of a book that are no lessons, with what stands at the head of their pages. */
export const OWN_PARTS: readonly Part[] = [
  { page: 'book-title', head: '' },
  { page: 'book-contents', head: 'Contents' },
  ...Object.values(BACK).map(({ page, title }) => ({ page, head: title })),
];
