import { growth } from '../../geometry/trigonometry/stretch.js';
import { derived } from '../../handbook/record.js';
import { sources } from '../../handbook/sources.js';
import { expansions, metals } from '../../handbook/trigonometry/expansion.js';
import { calculation, type Step } from '../calculation.js';
import { mm } from '../found.js';
import { length, number, type Quantity } from '../quantity.js';

const plain = number('k', 'coefficient of expansion', 'millionths per °C', 0.1, 100);

/** A coefficient as a number, or by the name of a metal of the handbook's table. */
const coefficient: Quantity<number> = {
  ...plain,
  accepts: `${plain.accepts}, or one of ${metals.join(', ')}`,
  read: (raw) => {
    const metal = metals.find((name) => name === raw);
    return metal ? expansions[metal].millionths : plain.read(raw);
  },
};

/** Whose figure it is, where it is that of a metal of the table. */
function whereFrom(millionths: number): Step[] {
  const metal = metals.find((name) => expansions[name].millionths === millionths);
  if (!metal) return [];
  const { work, at } = expansions[metal].source;
  return [
    { say: `${millionths} millionths for each °C is the figure for ${metal}: ${sources[work]}; ${at}.` },
  ];
}

export const expansionLength = calculation({
  name: 'expansion.length',
  title: 'Change of a length with temperature',
  given: {
    length: length('L', 'length', 0.001, 100_000),
    temperatureChange: number('T', 'rise of temperature', '°C', -300, 1500),
    coefficient,
  },
  found: {
    change: mm('x', 'change of length; less than nought for colder'),
    newLength: mm('y', 'length afterwards'),
  },
  work: (g) => {
    const change = growth(g.length, (g.coefficient * g.temperatureChange) / 1e6);
    return { change, newLength: g.length + change };
  },
  proofs: [
    { of: 'change', formula: 'expansion' },
    {
      of: 'newLength',
      source: derived('cooled back by as many degrees, it is as long as before'),
      within: (g) => 1e-11 * g.length,
      value: (g) => g.length,
      measure: {
        name: 'the new length cooled back, mm',
        of: (newLength: number, g) => newLength / (1 + (g.coefficient * g.temperatureChange) / 1e6),
      },
    },
  ],
  working: (g) => [...whereFrom(g.coefficient), 'x = L*k*T/1000000', 'y = L + x'],
  slips: {
    thousand: {
      of: 'change',
      formula: 'L*k*T/1000',
      says: 'The coefficient is in millionths, not thousandths.',
    },
    fahrenheit: {
      of: 'change',
      formula: 'L*k*T/1000000*5/9',
      says: 'You turned degrees Fahrenheit into Celsius; this coefficient and this rise are both in Celsius.',
    },
    noLength: {
      of: 'change',
      formula: 'k*T/1000000',
      says: 'That is for one millimetre; the length has more of them.',
    },
    shrunk: { of: 'newLength', formula: 'L - x', says: 'You took the change away: warmer is longer.' },
  },
});
