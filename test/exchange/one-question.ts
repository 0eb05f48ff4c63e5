import { assessmentItem } from '../../src/exchange/qti/item.js';
import type { Expected } from '../../src/problems/expected.js';
import type { Option, Part, Problem, SlipLine } from '../../src/problems/problem.js';
import { respond } from './processor.js';
import { VARIANT } from './sheets.js';
import { type Node, readXml } from './xml-reader.js';

/** Items with one question each, for answers that the sample course does not happen to ask. */
export async function itemsFor(
  asked: readonly Pick<Part, 'expects' | 'slips' | 'options'>[],
): Promise<Node[]> {
  const texts = asked.map(({ expects, slips, options = [] }) => {
    const part: Part = {
      ask: '',
      unit: '',
      room: 1,
      answer: 'the answer',
      accepted: 'only this',
      expects,
      slips,
      method: [],
      marks: [{ code: 'A1', for: 'accuracy' }],
      checks: [],
    };
    const problem: Problem = { name: 'one', level: 'a', ask: 'How?', values: {}, drawn: {}, parts: [part] };
    const words = { xhtml: '<p>How?</p>', plain: 'How?', figures: [] };
    const optionTexts = options.map(({ letter, text }) => ({
      letter,
      xhtml: `<p>${text}</p>`,
      plain: text,
      figures: [],
    }));
    const name = { identifier: 'one', title: 'One', label: VARIANT };
    return assessmentItem(name, problem, {
      ask: words,
      parts: [{ ...words, xhtml: '', options: optionTexts }],
    });
  });
  return readXml(texts);
}

/** The item of one question. */
export const itemFor = async (
  expects: Expected,
  slips: readonly SlipLine[] = [],
  options: readonly Option[] = [],
): Promise<Node> => (await itemsFor([{ expects, slips, options }]))[0] as Node;

/** What is scored for an answer typed into its one box. */
export const scores = (item: Node, text: string): number => respond(item, { RESPONSE_1: text }).score;
