import { openMeasured } from './measured.js';

/** Measures pages before they are printed. */
export interface Measure {
  /** By how much each part of a page is wider than the page has room for, in CSS pixels; nothing where all fits. */
  tooWide(file: string): Promise<number[]>;
  close(): Promise<void>;
}

const OVER = '[...document.body.children].map((part) => part.scrollWidth - part.clientWidth)';

export async function openMeasure(): Promise<Measure> {
  const { ask, close } = await openMeasured();
  return {
    tooWide: async (file) => ((await ask(file, OVER)) as number[]).filter((pixels) => pixels > 1),
    close,
  };
}
