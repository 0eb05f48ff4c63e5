import type { ExpectedNumber } from '../expected.js';
import type { SlipLine } from '../problem.js';
import { anglesOf } from './angle.js';
import { howToWrite } from './how-to-write.js';
import { nearNumber } from './near-number.js';
import { quantitiesOf, type Reading } from './quantity.js';
import { fromSlip, takesConverted, takesNumber } from './takes.js';
import { RIGHT, slipped, unread, type Verdict, WRONG } from './verdict.js';

/** What is said of an answer that is one number. @param text tidied */
export function takeNumber(text: string, expects: ExpectedNumber, slips: readonly SlipLine[]): Verdict {
  const reading = readingOf(text, expects);
  if (!reading) return unread(howToWrite(expects));
  const read = readAs(reading, expects);
  return { ...verdictOn(reading, expects, slips), ...(read === undefined ? {} : { read }) };
}

/** An answer that is one number; of two ways to read it the one that is nearer in size to what is asked. */
export function readingOf(text: string, expects: ExpectedNumber): Reading | undefined {
  const readings =
    expects.unit === '°' ? anglesOf(text, expects.angle !== undefined) : quantitiesOf(text, expects.unit);
  const off = ({ value }: Reading): number => Math.abs(Math.log(Math.abs(value / expects.value)));
  return readings.reduce<Reading | undefined>(
    (best, one) => (best === undefined || off(one) < off(best) ? one : best),
    undefined,
  );
}

function verdictOn(reading: Reading, expects: ExpectedNumber, slips: readonly SlipLine[]): Verdict {
  const { value, half } = reading;
  if (takesNumber(expects, value)) return RIGHT;
  const [slip] = slips
    .flatMap((line) => {
      const gives = line.shown ?? readingOf(line.gives, expects)?.value ?? Number.NaN;
      const apart = fromSlip(expects, gives, { shown: value, half });
      return apart === undefined ? [] : [{ line, apart }];
    })
    .sort((a, b) => a.apart - b.apart);
  if (slip) return slipped(slip.line);
  // A size in another unit is rounded there, and so may be a little off here.
  if (isConverted(reading, expects) && takesConverted(expects, value, half)) return RIGHT;
  return nearNumber(reading, expects) ?? WRONG;
}

const isConverted = ({ value, own, unit }: Reading, { unit: asked }: ExpectedNumber): boolean =>
  unit !== undefined && asked !== '°' && value !== own && Number.isFinite(value);

/** What an answer was read as, where that must be told. */
function readAs(reading: Reading, expects: ExpectedNumber): string | undefined {
  const { value, own, unit, ambiguous } = reading;
  if (isConverted(reading, expects))
    return `${figures(own)} ${unit?.label} is ${figures(value)} ${expects.unit}.`;
  return ambiguous && Number.isFinite(value) ? `Read as ${figures(value)}.` : undefined;
}

const figures = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−');
