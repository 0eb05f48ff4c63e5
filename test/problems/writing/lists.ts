import type { ExpectedNumbers } from '../../../src/problems/expected.js';
import { plain } from './plain.js';

/** Ways to write several numbers in order. */
export function listWays(printed: string, { each }: ExpectedNumbers): string[] {
  const parts = plain(printed).split(', ');
  const unit = each[0]?.unit ?? '';
  const bare = parts.map((part) => part.replace(/ [^\d]*$/, ''));
  return [
    parts.join('; '),
    parts.join(' and '),
    parts.join(', then '),
    parts.map((part) => part.replace('.', ',')).join('; '),
    bare.join(', '),
    `${bare.join(', ')} ${unit}`,
    bare.join(' '),
  ];
}
