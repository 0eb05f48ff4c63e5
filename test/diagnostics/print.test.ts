import { expect, it } from 'vitest';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { nearest } from '../../src/diagnostics/suggest.js';

it('prints place, rule, line, caret and hints', () => {
  const text = printDiagnostics(
    [
      {
        severity: 'error',
        rule: 'lesson/unknown-value',
        message: 'no value named "moduel"',
        file: 'a.md',
        start: { line: 2, column: 6 },
        length: 6,
        hints: ['Did you mean "module"?'],
      },
    ],
    new Map([['a.md', 'one\nUse {{moduel}}.']]),
  );
  expect(text).toBe(
    [
      'a.md:2:6: error[lesson/unknown-value] no value named "moduel"',
      '  2 | Use {{moduel}}.',
      '    |      ^^^^^^',
      '  hint: Did you mean "module"?',
    ].join('\n'),
  );
});

it('nearest finds a mistyped name and does not guess wildly', () => {
  expect(nearest('wheel.blnak', ['wheel.blank', 'pinion.blank'])).toBe('wheel.blank');
  expect(nearest('zzz', ['wheel.blank'])).toBeUndefined();
});
