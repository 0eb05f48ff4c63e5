import { openMeasured } from './measured.js';

/** Measures cards before they are printed. */
export interface CardMeasure {
  /** The titles of the cards on which something is higher or wider than its room. */
  overfull(file: string): Promise<string[]>;
  close(): Promise<void>;
}

const OVERFULL = `[...document.querySelectorAll('.bench-card')].filter((card) => {
  const face = card.querySelector('.face');
  return face.scrollHeight > face.clientHeight + 1 || face.scrollWidth > face.clientWidth + 1 ||
    card.scrollWidth > card.clientWidth + 1;
}).map((card) => card.querySelector('h1').textContent)`;

export async function openCardMeasure(): Promise<CardMeasure> {
  const { ask, close } = await openMeasured();
  return { overfull: async (file) => (await ask(file, OVERFULL)) as string[], close };
}
