import { describe, expect, it } from 'vitest';
import { Faults, type Written } from '../../src/sheets/fault.js';
import { fillTemplate } from '../../src/sheets/fill.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { textTemplates } from '../../src/sheets/text-templates.js';
import { complaints } from './faulty.js';

const metric: SheetStyle = { paper: 'a4', units: 'mm', print: 'plain' };
const inches: SheetStyle = { paper: 'letter', units: 'inch', print: 'plain' };
const values = {
  teeth: 60,
  module: 0.8,
  third: 0.1 + 0.2,
  word: 'brass',
  cold: -3,
  circles: [15, 16, 21],
  sizes: [12.7, 25.4],
  wheel: { outsideDiameter: 50.208, anglePerTooth: 360 / 56 },
  yes: true,
  no: false,
  indexing: {
    possible: true,
    turns: 1,
    settings: [
      { holes: 5, circle: 15 },
      { holes: 7, circle: 21 },
    ],
  },
  even: {
    possible: true,
    turns: 2,
    settings: [
      { holes: 0, circle: 15 },
      { holes: 0, circle: 16 },
    ],
  },
  small: { possible: true, turns: 0, settings: [{ holes: 1, circle: 20 }] },
  never: { possible: false, turns: 0, settings: [], reason: 'no circle serves' },
};
const written = (text: string): Written => ({ file: 'lesson.md', text, line: 10, about: 'the text' });

function fill(text: string, style = metric): string {
  const faults = new Faults();
  const filled = fillTemplate(written(text), values, style, { templates: textTemplates, faults });
  faults.demandNone();
  return filled.text.replaceAll('\u202F', '_');
}

describe('values in a text', () => {
  it.each([
    ['{{teeth}} teeth', '60 teeth'],
    ['{{third}}', '0.3'],
    ['{{cold}}', '−3'],
    ['{{word}}', 'brass'],
    ['{{yes}}, {{no}}', 'possible, not possible'],
    ['{{circles}}', '15, 16 and 21'],
    ['{{list circles}}', '15, 16 and 21'],
    ['{{mm module}}', '0.8_mm'],
    ['{{mm module places=2}}', '0.80_mm'],
    ['{{length wheel.outsideDiameter}}', '50.21_mm'],
    ['{{length wheel.outsideDiameter places=1}}', '50.2_mm'],
    ['{{length sizes}}', '12.70_mm and 25.40_mm'],
    ['{{number third places=3}}', '0.300'],
    ['{{number wheel.outsideDiameter}}', '50.208'],
    ['{{angle wheel.anglePerTooth}}', '6°\u00A025′\u00A043″'],
    ['{{moves indexing}}', '1 whole turn and 5 spaces on the 15-hole circle or 7 on the 21'],
    ['{{moves even}}', '2 whole turns and no spaces'],
    ['{{moves small}}', '1 space on the 20-hole circle'],
    ['{{moves never}}', 'not possible: no circle serves'],
    ['{{#if yes}}\nwe can\n{{else}}\nwe cannot\n{{/if}}\n', 'we can\n'],
    ['{{#if no}}\nwe can\n{{else}}\nwe cannot\n{{/if}}\n', 'we cannot\n'],
    ['{{#unless no}}so be it{{/unless}}', 'so be it'],
    ['a < b & "c"', 'a < b & "c"'],
  ])('%s is %s', (text, filled) => expect(fill(text)).toBe(filled));

  it('states lengths in the units of the sheet, and a module always in mm', () => {
    expect(fill('{{length wheel.outsideDiameter}} {{mm module}} {{length 25.4 places=1}}', inches)).toBe(
      '1.977_in 0.8_mm 1.00_in',
    );
  });

  it('keeps a value that looks like a template as it is', () => {
    const faults = new Faults();
    const { text } = fillTemplate(written('{{word}}'), { word: '}} {{teeth}} <b>' }, metric, {
      templates: textTemplates,
      faults,
    });
    expect(text).toBe('}} {{teeth}} <b>');
  });
});

describe('blocks in a text', () => {
  const blocks = {
    worked: (name: string) => `<worked ${name}>`,
    figure: (name: string, given: object) => `<figure ${name} ${JSON.stringify(given)}>`,
    problems: () => '<problems>',
  };

  it('leaves a placeholder of one line for each, so that the lines below stay where they are', () => {
    const text =
      'one\n\n{{worked "wheel"}}\n\n{{figure "blank" teeth=teeth caption="a | b"}}\n\n{{problems}}\nend';
    const filled = fillTemplate(written(text), values, metric, {
      templates: textTemplates,
      blocks,
      faults: new Faults(),
    });
    expect(filled.text.split('\n')).toHaveLength(text.split('\n').length);
    expect(filled.text).not.toContain('<');
    expect(filled.blocks).toEqual([
      '<worked wheel>',
      '<figure blank {"caption":"a | b","teeth":60}>',
      '<problems>',
    ]);
  });

  it('takes nobody’s word for a placeholder', () => {
    const filled = fillTemplate(written('\uE0000\uE001 {{teeth}}'), values, metric, {
      blocks,
      templates: textTemplates,
      faults: new Faults(),
    });
    expect(filled.text).toBe('\uFFFD0\uFFFD 60');
  });
});

describe('what cannot be filled', () => {
  it.each([
    ['is {{nope}}', 4, 'nothing'],
    ['is {{mm word}}', 4, 'not a length'],
    ['is {{length wheel}}', 4, 'not a length'],
    ['is {{angle circles}}', 4, 'not an angle'],
    ['is {{moves wheel}}', 4, 'not a working of dividing.simple'],
    ['is {{number teeth places=-1}}', 4, 'places is not 0 to 9'],
    ['is {{figure "x"}} here', 4, 'may not stand inside a text'],
    ['is {{teeth', 0, 'cannot be read'],
    ['is {{#each circles}}x{{/each}}', 4, 'each'],
    ['is {{wheel.nope.deeper}}', 4, 'nothing'],
    ['is {{mm never.settings.0.holes}}', 4, 'nothing'],
    ['is {{constructor}}', 4, 'nothing'],
    ['is {{wheel.__proto__}}', 4, 'nothing'],
    ['is {{{log teeth}}}', 4, 'log'],
  ])('%s is told with its place', (text, column, message) => {
    const [fault] = complaints(() => fill(`line\n${text}`));
    expect(fault?.rule).toMatch(/^sheet\/(value|template)$/);
    expect(fault?.message).toContain(message);
    expect(fault?.start.line).toBe(11);
    if (column > 0) expect(fault?.start.column).toBe(column);
    expect(fault?.hints).toHaveLength(1);
  });
});
