/** What a letter stands for. */
export interface Letter {
  /** As formulas write it: `D_1`. */
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
}

/** What the trade's own letters stand for, where neither a working nor the lesson says. */
export const letters: readonly Letter[] = [
  { symbol: 'a', meaning: 'centre distance', unit: 'mm' },
  { symbol: 'd', meaning: 'pitch diameter', unit: 'mm' },
  { symbol: 'd_a', meaning: 'outside diameter', unit: 'mm' },
  { symbol: 'd_f', meaning: 'root diameter', unit: 'mm' },
  { symbol: 'D', meaning: 'diameter of cutter or work', unit: 'mm' },
  { symbol: 'f', meaning: 'feed', unit: 'mm' },
  { symbol: 'h', meaning: 'full depth of cut', unit: 'mm' },
  { symbol: 'h_a', meaning: 'addendum', unit: 'mm' },
  { symbol: 'h_f', meaning: 'dedendum', unit: 'mm' },
  { symbol: 'H', meaning: 'holes in a circle', unit: '' },
  { symbol: 'k', meaning: 'spaces moved', unit: '' },
  { symbol: 'L', meaning: 'pitch of the lead screw', unit: 'mm' },
  { symbol: 'm', meaning: 'module', unit: 'mm' },
  { symbol: 'n', meaning: 'leaves in the pinion', unit: '' },
  { symbol: 'N', meaning: 'divisions wanted', unit: '' },
  { symbol: 'p', meaning: 'circular pitch', unit: 'mm' },
  { symbol: 'P', meaning: 'diametral pitch', unit: 'teeth per inch' },
  { symbol: 'P_t', meaning: 'pitch of a thread', unit: 'mm' },
  { symbol: 'pi', meaning: 'circumference over diameter of any circle, 3.1416', unit: '' },
  { symbol: 'R', meaning: 'turns of the crank for one turn of the work', unit: '' },
  { symbol: 'S', meaning: 'spindle speed', unit: 'rev/min' },
  { symbol: 'V', meaning: 'cutting speed', unit: 'm/min' },
  { symbol: 'z', meaning: 'teeth in the wheel', unit: '' },
];
