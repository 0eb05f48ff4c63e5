import { describe, expect, it } from 'vitest';
import { judge, type Verdict } from '../../src/problems/judge.js';
import { questions } from './ways-to-write.js';

/** `right`, `slip: You used 2.`, `right; Read as 1250.` */
function told(verdict: Verdict): string {
  const says = 'says' in verdict && verdict.kind !== 'unread' ? `: ${verdict.says}` : '';
  return verdict.kind + says + (verdict.read ? `; ${verdict.read}` : '');
}

describe.each(questions)('$asked', ({ expects, slips = [], ways }) => {
  const rows = Object.entries(ways).flatMap(([outcome, all]) =>
    all.map((typed) => [typed, outcome] as const),
  );
  it.each(rows)('%j: %s', (typed, outcome) => {
    const verdict = judge(typed, { expects, slips, unit: '' });
    const [kind = '', words = ''] = outcome.split(/: |; /);
    expect(told(verdict)).toMatch(new RegExp(`^${kind}\\b`));
    expect(told(verdict)).toContain(words);
    if (verdict.kind === 'unread') expect(verdict.says).toMatch(/^Write .+\.$/);
  });
});

it('more than 200 ways, each once for its question', () => {
  const all = questions.map(({ ways }) => Object.values(ways).flat());
  expect(all.flat().length).toBeGreaterThan(200);
  for (const typed of all) expect(new Set(typed).size).toBe(typed.length);
});
