import { basename } from 'node:path';
import type { Calculation } from '../calculations/calculation.js';
import type { CalculationEntry } from '../calculations/catalogue.js';
import type { Worked } from '../calculations/work.js';
import { ContentError } from '../diagnostics/diagnostic.js';
import type { ReportedError } from '../diagnostics/errors.js';
import { harmless, printDiagnostics } from '../diagnostics/print.js';
import type { Checked } from '../pack/check.js';
import type { Made } from '../pack/make.js';
import { counted } from '../units/words.js';
import { foundLines } from './found-text.js';

/** A worked calculation as a person reads it: what was given, typed or not, what was found, the working, the check. */
export function workText(worked: Worked, { given, found }: Calculation): string {
  const lines = [worked.calculation, '', 'Given'];
  for (const [key, value] of Object.entries(worked.given))
    lines.push(...foundLines(key, value, given[key]?.unit ?? ''));
  lines.push('', 'Found');
  for (const [key, value] of Object.entries(worked.found))
    lines.push(...foundLines(key, value, found[key]?.unit ?? ''));
  lines.push('', 'Working', ...worked.working.map((line) => `  ${line}`), '', 'Check by a second route');
  for (const check of worked.checks)
    lines.push(`  ${check.of}: ${check.measured ? `${check.measured}: ` : ''}agrees (${check.source})`);
  return `${lines.join('\n')}\n`;
}

/** The calculations with what each is given and finds, for a person. */
export function listText(entries: readonly CalculationEntry[]): string {
  const lines = entries.flatMap(({ name, title, given, found }) => [
    `${name}: ${title}`,
    '  given',
    ...given.map((one) => `    ${one.key}: ${one.name}; ${one.accepts}${whenLeftOut(one)}`),
    '  found',
    ...found.map(({ key, name: what, unit }) => `    ${key}: ${what}${unit && `, ${unit}`}`),
  ]);
  return `${lines.join('\n')}\n`;
}

const whenLeftOut = (one: CalculationEntry['given'][number]): string =>
  one.default === undefined ? (one.optional ? ' (may be left out)' : '') : ` (else ${one.default})`;

/** What was checked, for a person. */
export function checkedText(checked: readonly Checked[]): string {
  return checked
    .map(({ file, problems, variants, different }) =>
      problems === 0
        ? `${file}: in order\n`
        : `${file}: in order; ${counted(problems, 'problem')}, ${variants} variants of each\n${differentText(different)}`,
    )
    .join('');
}

function differentText(different: Checked['different']): string {
  const told = different.map(({ problem, count, more }) => `${problem} ${count}${more ? ' or more' : ''}`);
  return told.length === 0 ? '' : `  different problems: ${told.join(', ')}\n`;
}

/** What a run made, for a person. */
export function madeText({ variant, documents, shard }: Made, folder: string): string {
  const pages = documents.reduce((sum, document) => sum + document.pages, 0);
  const numbers = documents.some((document) => document.variant) ? `, variant ${variant}` : '';
  const printed = pages === 0 ? '' : `, ${counted(pages, 'page')}`;
  const told = documents.flatMap(({ file, reports = [] }) =>
    reports.map((one) => `${basename(file)}: ${one}\n`),
  );
  const part = shard ? `, part ${shard.number} of ${shard.of}` : '';
  const kept = documents.filter((document) => document.kept).length;
  const before = kept === 0 ? '' : `; ${kept} had been printed before`;
  return `${told.join('')}${counted(documents.length, 'document')}${printed} in ${folder}${part}${numbers}${before}\n`;
}

/** What went wrong, for a person: each fault of the content with its place, or one line. */
export function faultText(error: ContentError | ReportedError): string {
  if (error instanceof ContentError) return `${printDiagnostics(error.diagnostics, error.sources)}\n`;
  const { message, hints } = error;
  return harmless(`benchleaf: ${hints.length > 0 ? `${message}. ${hints.join(' ')}` : message}\n`);
}
