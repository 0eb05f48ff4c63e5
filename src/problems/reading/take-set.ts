import type { ExpectedSet } from '../expected.js';
import { howToWrite } from './how-to-write.js';
import { listsOf, withoutIdle } from './listed.js';
import { phraseOf, samePhrase } from './phrase.js';
import { quantitiesOf } from './quantity.js';
import { tidied } from './tidy.js';
import { near, RIGHT, unread, type Verdict, WRONG } from './verdict.js';
import { saysNo } from './yes-no.js';

const NOTHING = /^(?:nothing|nil|-+|0|zero)$/;
/** `40:1` and `40 to 1` are a head of 40. */
const TO_ONE = / ?(?::| to ) ?(?:1|one)$/;
/** A word of this many letters may have one wrong. */
const LONG = 6;

/** What is said of all that serve, in any order. @param text tidied */
export function takeSet(text: string, expects: ExpectedSet): Verdict {
  const { items } = expects;
  if (text === '') return unread(howToWrite(expects));
  if (saysNo(text) || NOTHING.test(text)) return items.length === 0 ? RIGHT : WRONG;
  const wanted = items.map(itemOf);
  const verdicts = listsOf(text).map((list) => verdictOn(list, wanted));
  const best = (['right', 'near', 'wrong'] as const).map((kind) =>
    verdicts.find((one) => one?.kind === kind),
  );
  return (
    best[0] ??
    best[1] ??
    best[2] ??
    (items.length === 0 && /\d/.test(text) ? WRONG : unread(howToWrite(expects)))
  );
}

/** One that serves, and whether something that was written is that one. */
interface Item {
  readonly isNumber: boolean;
  is(typed: string): boolean;
}

function itemOf(printed: string): Item {
  const text = tidied(printed) ?? printed;
  const label = /^-?[\d.]+ ?(?<unit>[^\d\s].*)?$/.exec(text)?.groups?.unit ?? '';
  const [number] = quantitiesOf(text, label);
  if (!number) {
    const words = phraseOf(withoutIdle(text));
    return { isNumber: false, is: (typed) => samePhrase(phraseOf(typed), words, LONG) };
  }
  const is = (typed: string): boolean =>
    quantitiesOf(typed, label).some(({ value, half }) => {
      // Three places are enough to know a size by.
      const slack = half > 0 && half <= 0.0005 ? half : 0;
      return Math.abs(value - number.value) <= slack + 1e-6;
    });
  return { isNumber: true, is };
}

function verdictOn(list: readonly string[], wanted: readonly Item[]): Verdict | undefined {
  const typed = list.map((one) => one.replace(TO_ONE, ''));
  const numbers = wanted.some(({ isNumber }) => isNumber);
  if (
    numbers &&
    !typed.every((one) => quantitiesOf(one, '').length > 0 || wanted.some((item) => item.is(one)))
  )
    return undefined;
  if (wanted.length === 0) return undefined;
  const missing = wanted.filter((item) => !typed.some((one) => item.is(one))).length;
  const strange = typed.filter((one) => !wanted.some((item) => item.is(one))).length;
  if (missing === 0 && strange === 0) return RIGHT;
  if (strange === 0) return near('Those are right, but they are not all.');
  if (missing === 0) return near('All that are right are there, but so is one that is not.');
  return WRONG;
}
