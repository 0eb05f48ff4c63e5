import type { TemplateFault } from './template.js';

/** Pairs of braces in one text; the fullest lesson has 190. */
const MOST = 1000;
/** Conditions one inside the other; each `else if` stands inside the one before. */
const DEEPEST = 12;

const BRACES = /\{\{+~?\s*(?:(?<opens>[#^]\s*\w)|(?<ends>\/)|(?<chains>else\s+\w))?/g;
const HINT = 'Write less, or part it into two lessons.';

/** More braces than the reader of templates can be trusted with: its time grows with the square of their depth. */
export function crowdedBraces(text: string): TemplateFault | undefined {
  const open: number[] = [];
  let [met, depth] = [0, 0];
  for (const { index, 0: braces, groups = {} } of text.matchAll(BRACES)) {
    met += 1;
    if (groups.opens) open.push(1);
    if (groups.chains && open.length > 0) open[open.length - 1] = (open.at(-1) ?? 0) + 1;
    if (groups.opens || groups.chains) depth += 1;
    if (groups.ends) depth -= open.pop() ?? 0;
    const message = whatIsWrong(braces, met, depth);
    if (message === undefined) continue;
    const before = text.slice(0, index).split('\n');
    const [line, column] = [before.length, (before.at(-1)?.length ?? 0) + 1];
    return { rule: 'braces', message, line, column, length: braces.length, hints: [HINT] };
  }
  return undefined;
}

function whatIsWrong(braces: string, met: number, depth: number): string | undefined {
  if (met > MOST) return `there are more than ${MOST} pairs of braces`;
  if (depth > DEEPEST) return `more than ${DEEPEST} conditions stand one inside the other`;
  return braces.startsWith('{{{{') ? 'four braces are two too many' : undefined;
}
