import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import { chanceFrom } from '../../src/problems/chance.js';
import { codeFor } from '../../src/problems/code.js';
import { judge } from '../../src/problems/judge.js';
import type { Part, Problem } from '../../src/problems/problem.js';
import { marksIn, marksOf } from '../../src/sheets/problem-marks.js';
import { correctResponses, respond } from './processor.js';
import { itemFile, KITS, sheetsFor, styleIn, UNITS } from './sheets.js';
import { printedAnswers, someAnswer, type Typed, typed } from './typed.js';
import { type Node, openReader, type XmlReader } from './xml-reader.js';

/** Of each workshop; `npm run soak` draws 200 in all. */
const SHEETS = process.env.BENCHLEAF_SOAK ? 50 : 1;
const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));

/**
 * Every item of many sheets, answered. What is shown and scored is found by processor.ts, which carries out the
 * response processing as the standard describes it; it is ours, as no package here brings the standard's own tools.
 */
describe.each(workshops)(`the items of ${SHEETS} sheets for $kit in $units`, ({ kit, units }) => {
  let reader: XmlReader;
  beforeAll(async () => {
    reader = await openReader();
  });
  afterAll(() => reader.close());

  it('score the printed answer in full, know every slip, and neither of any other answer', async () => {
    const draw = sheetsFor(kit, units);
    const told = { answers: 0, slips: 0, others: 0 };
    for (let place = 0; place < SHEETS; place++) {
      const variant = codeFor(`${kit}/${units}/${place}`);
      const sheet = draw(variant);
      const files = qtiFiles(sheet, styleIn(units));
      const asked = sheet.lessons.flatMap(({ problems }, at) =>
        problems.map((problem) => ({ problem, text: files.get(itemFile(at, problem, variant)) ?? '' })),
      );
      const items = await reader.read(asked.map(({ text }) => text));
      for (const [at, { problem }] of asked.entries()) {
        const item = new AnsweredItem(problem, items[at] as Node, variant);
        item.unanswered();
        told.answers += item.printedAnswers();
        told.slips += item.slips();
        told.others += item.otherAnswers();
      }
    }
    expect(told.answers).toBeGreaterThan(SHEETS * 40);
    expect(told.slips).toBeGreaterThan(SHEETS * 60);
    expect(told.others).toBeGreaterThan(SHEETS * 30);
  }, 120_000);
});

/** One item, one of its questions answered in some way and the others rightly. */
class AnsweredItem {
  readonly #right: Typed;

  constructor(
    readonly problem: Problem,
    readonly item: Node,
    readonly variant: string,
  ) {
    this.#right = correctResponses(item);
  }

  /** No answer gets no mark; it is shown how the problem is worked. */
  unanswered(): void {
    const { score, outcomes, feedback } = respond(this.item, {});
    expect([score, outcomes.MAXSCORE], this.variant).toEqual([0, marksOf(this.problem)]);
    expect(feedback.at(-1)).toMatch(/^Method/);
    for (const { answer } of this.problem.parts) expect(feedback.at(-1)).toContain(answer);
  }

  printedAnswers(): number {
    return this.#each((part, id, about) => {
      const answers = printedAnswers(part.answer, part.expects);
      for (const answer of answers) {
        expect(judge(answer, part).kind, `${about}: ${answer}, on the practice page`).toBe('right');
        const { score, outcomes } = respond(
          this.item,
          this.#with(typed(answer, part.expects, id, this.item)),
        );
        expect(score, `${about}: ${answer}`).toBe(marksOf(this.problem));
        expect(outcomes[id.replace('RESPONSE', 'FEEDBACK')]).toBe('right');
      }
      return answers.length;
    });
  }

  slips(): number {
    return this.#each((part, id, about) => {
      for (const slip of part.slips) {
        const answer = typed(slip.gives, part.expects, id, this.item);
        const { score, feedback } = respond(this.item, this.#with(answer));
        expect(score, `${about}: ${slip.gives}`).toBe(marksOf(this.problem) - marksIn(part.marks));
        expect(feedback.join('\n'), `${about}: ${slip.gives}`).toContain(slip.says);
      }
      return part.slips.length;
    });
  }

  otherAnswers(): number {
    const chance = chanceFrom(`${this.variant}/${this.problem.name}`);
    return this.#each((part, id, about) => {
      const answer = Array.from({ length: 20 }, () => someAnswer(part.expects, chance)).find(
        (one) => one !== undefined && ['wrong', 'near'].includes(judge(one, part).kind),
      );
      if (answer === undefined) return 0;
      const { score, outcomes } = respond(this.item, this.#with(typed(answer, part.expects, id, this.item)));
      expect(score, `${about}: ${answer}`).toBe(marksOf(this.problem) - marksIn(part.marks));
      expect(outcomes[id.replace('RESPONSE', 'FEEDBACK')], `${about}: ${answer}`).toBe('wrong');
      return 1;
    });
  }

  #with(answer: Typed): Typed {
    return { ...this.#right, ...answer };
  }

  #each(answer: (part: Part, id: string, about: string) => number): number {
    return this.problem.parts.reduce(
      (sum, part, at) =>
        sum + answer(part, `RESPONSE_${at + 1}`, `${this.variant} ${this.problem.name}, part ${at + 1}`),
      0,
    );
  }
}
