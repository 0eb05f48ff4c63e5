import { judge, type Verdict } from '../../../src/problems/judge.js';
import type { Part } from '../../../src/problems/problem.js';
import { justInside, justOutside } from './beside.js';
import { waysToBeRight, waysToSlip } from './ways.js';

/** How many answers were judged. */
export interface Judged {
  right: number;
  slips: number;
  outside: number;
}

/** What is wrong with how answers to a part are judged, if anything is. */
export function misjudged(part: Part, judged: Judged): string | undefined {
  const said = (typed: string): Verdict => judge(typed, part);
  const told = (typed: string): string => `${JSON.stringify(typed)} is ${JSON.stringify(said(typed))}`;

  const printed = said(part.answer);
  if (printed.kind !== 'right' || printed.read !== undefined) return `the answer ${told(part.answer)}`;
  for (const typed of [...waysToBeRight(part), ...justInside(part)]) {
    if (said(typed).kind !== 'right') return told(typed);
    judged.right++;
  }
  for (const { gives, says } of part.slips)
    for (const typed of waysToSlip(gives, part.expects)) {
      const verdict = said(typed);
      if (verdict.kind !== 'slip' || verdict.says !== says) return `the slip ${gives}: ${told(typed)}`;
      judged.slips++;
    }
  for (const typed of justOutside(part.expects)) {
    if (said(typed).kind === 'right') return told(typed);
    judged.outside++;
  }
  return undefined;
}
