import type { Part } from '../../../src/problems/problem.js';

/** What is wrong with a part, judged by nothing but what is printed. */
export const misprinted = (part: Part): string | undefined =>
  wrong(part) ?? wronglyLettered(part) ?? tells(part) ?? follows(part);

/** Numbers of a printed text: `50.20 mm to 50.22 mm` is 50.2 and 50.22; `6° 26′` is 6.4333…. */
function numbersOf(text: string): number[] {
  if (/°\s*\d+′/.test(text))
    return [...text.matchAll(/(\d+)°\s(\d+)′(?:\s(\d+)″)?/g)].map(
      ([, d, m, s]) => Number(d) + Number(m) / 60 + Number(s ?? 0) / 3600,
    );
  return [...text.replaceAll('−', '-').matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
}

function wrong({ answer, accepted, slips, checks, method, marks }: Part): string | undefined {
  if (method.length === 0 || marks.length === 0 || checks.length === 0) return 'a line of the key is missing';
  if (checks.some(({ source, value, agreement }) => !source || !value || !agreement)) return 'an empty check';
  if (slips.some(({ gives }) => gives === answer)) return 'a slip prints as the answer';
  if (/NaN|undefined|Infinity/.test(JSON.stringify([answer, accepted, slips, checks, method])))
    return 'no number';
  const [low, high] = / to /.test(accepted) && !/in this order/.test(accepted) ? numbersOf(accepted) : [];
  if (low === undefined || high === undefined) return undefined;
  const [right = Number.NaN] = numbersOf(answer);
  if (!(low <= right && right <= high && low < high)) return 'the answer is outside its own range';
  const inside = slips.find(({ gives }) => {
    const [given = Number.NaN] = numbersOf(gives);
    return given >= low && given <= high;
  });
  return inside && `the slip ${inside.gives} is taken as right`;
}

/** What is wrong with options and their letters. */
function wronglyLettered({ options, expects, slips }: Part): string | undefined {
  if (options === undefined) return undefined;
  if (expects.kind !== 'choice' && expects.kind !== 'order') return 'options for no letter';
  const letters = options.map(({ letter }) => letter);
  if (letters.join('') !== 'ABCDE'.slice(0, options.length)) return 'letters out of order';
  if (new Set(options.map(({ text }) => text)).size < options.length) return 'two options alike';
  const right = expects.kind === 'choice' ? [expects.letter] : expects.letters;
  if (right.some((letter) => !letters.includes(letter))) return 'a right letter that is not printed';
  if (expects.kind === 'order' && new Set(right).size < letters.length) return 'a letter left out';
  return slips.some(({ gives }) => gives.split(', ').some((letter) => !letters.includes(letter)))
    ? 'a slip for no option'
    : undefined;
}

/** Whether what is printed of the working tells the answer. */
function tells({ shown, expects }: Part): string | undefined {
  if (shown === undefined || expects.kind !== 'number') return undefined;
  const within = expects.step / 2;
  const figures = numbersOf(JSON.stringify(shown).replaceAll(/"formula":"[^"]*"/g, ''));
  return figures.some((figure) => Math.abs(figure - expects.value) <= within)
    ? 'the working tells the answer'
    : undefined;
}

/** What follows from a slip is another answer than the right one. */
function follows(part: Part): string | undefined {
  const line = (part.follows ?? []).find(
    ({ answer }) => answer === part.answer || /NaN|undefined/.test(answer),
  );
  return line && 'a slip that changes nothing';
}
