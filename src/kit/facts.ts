import type { Kit } from './schema.js';

/** What a text may say of the workshop. */
export interface KitFacts {
  readonly name: string;
  /** The first dividing head; empty where there is none. */
  readonly head: string;
  readonly units: 'mm' | 'inch';
}

/** What a text may say of the workshop. */
export function factsOf({ kit, heads, units }: Kit): KitFacts {
  return { name: kit, head: heads[0]?.name ?? '', units };
}
