import type { ExpectedNumbers } from '../expected.js';
import { howToWrite } from './how-to-write.js';
import { listsOf } from './listed.js';
import { takeNumber } from './take-number.js';
import { near, RIGHT, unread, type Verdict, WRONG } from './verdict.js';

/** What is said of several numbers in order. A unit behind the last goes for all. @param text tidied */
export function takeNumbers(text: string, expects: ExpectedNumbers): Verdict {
  const verdicts = listsOf(text)
    .map((list) => verdictOn(withUnit(list), expects))
    .filter(({ kind }) => kind !== 'unread');
  const best = (['right', 'near'] as const).map((kind) => verdicts.find((one) => one.kind === kind));
  return best[0] ?? best[1] ?? verdicts[0] ?? unread(howToWrite(expects));
}

function verdictOn(list: readonly string[], expects: ExpectedNumbers): Verdict {
  const { each } = expects;
  const ordered = each.map((one, at) => takeNumber(list[at] ?? '', one, []));
  const given = list.map((one, at) => ordered[at] ?? takeNumber(one, each[0] as (typeof each)[number], []));
  if (given.some(({ kind }) => kind === 'unread')) return unread(howToWrite(expects));
  const right = (all: readonly Verdict[]): boolean => all.every(({ kind }) => kind === 'right');
  if (list.length < each.length)
    return right(given) ? near('Right as far as it goes, but there is more to give.') : WRONG;
  if (list.length > each.length)
    return right(ordered) ? near('Right at first, but those are too many.') : WRONG;
  if (right(given)) return RIGHT;
  if (
    right(
      sorted(list).map((one, at) =>
        takeNumber(one, byValue(each)[at] ?? (each[0] as (typeof each)[number]), []),
      ),
    )
  )
    return near('The numbers are right, but not their order.');
  return given.every(({ kind }) => kind === 'right' || kind === 'near')
    ? (given.find(({ kind }) => kind === 'near') ?? WRONG)
    : WRONG;
}

const byValue = (each: ExpectedNumbers['each']) => [...each].sort((a, b) => a.value - b.value);
const sorted = (list: readonly string[]): string[] =>
  [...list].sort((a, b) => Number.parseFloat(a.replace(',', '.')) - Number.parseFloat(b.replace(',', '.')));

/** Each with the unit of the last, where only that has one. */
function withUnit(list: readonly string[]): string[] {
  const unit = /[\d.](?<unit> ?[a-z"'°%]+)$/.exec(list.at(-1) ?? '')?.groups?.unit ?? '';
  return list.map((one, at) => (at < list.length - 1 && /\d$/.test(one) ? one + unit : one));
}
