import type { ExpectedWord } from '../expected.js';
import { howToWrite } from './how-to-write.js';
import { phraseOf, samePhrase } from './phrase.js';
import { tidied } from './tidy.js';
import { RIGHT, unread, type Verdict, WRONG } from './verdict.js';
import { yesOrNo } from './yes-no.js';

/** A misspelt word must be this long where nothing is known of what else could be said. */
const LONG = 6;
/** The same where there are only two things to say. */
const SHORT = 4;

/** What is said of a word or phrase; a small mistake of spelling is none. @param text tidied */
export function takeWord(text: string, expects: ExpectedWord): Verdict {
  const typed = phraseOf(text);
  const word = phrase(expects.word);
  if (text === '') return unread(howToWrite(expects));
  if (expects.other === undefined) return samePhrase(typed, word, LONG) ? RIGHT : WRONG;
  const other = phrase(expects.other);
  const said = saidOf(text, typed, word, other);
  if (said === undefined) return unread(howToWrite(expects));
  return said === word ? RIGHT : WRONG;
}

const phrase = (printed: string): string[] => phraseOf(tidied(printed) ?? printed);

type Phrase = readonly string[];

/** Which of two phrases an answer says, if it says either. */
function saidOf(text: string, typed: Phrase, word: Phrase, other: Phrase): Phrase | undefined {
  const among = (said: Phrase): Phrase | undefined => {
    const matches = [word, other].filter((one) => samePhrase(said, one, SHORT));
    return (
      matches.find((one) => samePhrase(said, one, Number.POSITIVE_INFINITY)) ??
      (matches.length === 1 ? matches[0] : undefined)
    );
  };
  // What stands straight behind a no is denied by it: `no strike`, but `no, it strikes`.
  const plain = /^(?:yes\b,?|no,|no(?= it\b)) ?(?<rest>.+)$/.exec(text)?.groups?.rest;
  const said = among(typed) ?? (plain === undefined ? undefined : among(phraseOf(plain)));
  if (said) return agrees(text, plain, said, word, other) ? said : undefined;
  const stemmed = among(stem(typed));
  if (stemmed && typed.includes('not')) return stemmed === word ? other : word;
  if (stemmed && !denies(typed)) return stemmed;
  const yes = yesOrNo(text);
  if (yes === undefined || denies(word) === denies(other)) return undefined;
  return (yes === 'no') === denies(word) ? word : other;
}

/** Whether a yes or no before the phrase says the same as it. */
function agrees(text: string, rest: string | undefined, said: Phrase, word: Phrase, other: Phrase): boolean {
  if (rest === undefined || denies(word) === denies(other)) return true;
  return text.startsWith('no') === denies(said);
}

const denies = (words: Phrase): boolean => words.includes('not') || words.includes('no');

/** What is left of a phrase without such words: `does not strike` and `will strike` are `strike`. */
const stem = (words: Phrase): string[] =>
  words.filter((word) => !/^(?:not|do|does|did|will|would|can|be)$/.test(word));
