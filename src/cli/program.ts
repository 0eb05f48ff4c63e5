import { readFileSync } from 'node:fs';
import { Command, CommanderError } from 'commander';
import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, ReportedError } from '../diagnostics/errors.js';
import { harmless, printDiagnostics } from '../diagnostics/print.js';
import { lists } from './lists.js';
import { addMake } from './make.js';
import { missingPart } from './missing-part.js';
import type { Streams } from './streams.js';
import { checkedText, faultText, workText } from './text.js';
import { addVerify } from './verify.js';

/** The commands, described for a reader who has never used a terminal program before. */
export function program({ out, err }: Streams): Command {
  const benchleaf = new Command('benchleaf')
    .description(
      'Makes teaching workbooks for model-engineering classes: handouts, problem sheets, answer keys and shop cards.\n' +
        'Every number is worked by two independent routes.',
    )
    .version(version())
    .showHelpAfterError('(benchleaf --help explains the commands)')
    .configureOutput({ writeOut: out, writeErr: (text) => err(harmless(text)) })
    .exitOverride();

  addMake(benchleaf, { out, err });
  addVerify(benchleaf, out);

  benchleaf
    .command('work')
    .description('work one calculation, with its working and its check')
    .argument('<calculation>', 'its name, such as wheel.blank (see: benchleaf list)')
    .argument('[values...]', 'what it is given, each as name=value')
    .option('--kit <file>', 'take what is not given from this workshop’s kit, such as circles of holes')
    .option('--json', 'print data instead of text')
    .addHelpText(
      'after',
      '\nExamples:\n  benchleaf work wheel.blank teeth=60 leaves=8 module=0.8\n' +
        '  benchleaf work dividing.simple divisions=56 ratio=40 circles=15,16,17,18,19,20,21\n' +
        '  benchleaf work setup.overTravel cutterDiameter=1in depth=2.36 thickness=9.5mm',
    )
    .action(async (name: string, values: string[], options: { json?: true; kit?: string }) => {
      const typed = readPairs(values);
      const { work } = await import('../calculations/work.js');
      const worked = work(name, options.kit ? await withKit(options.kit, name, typed) : typed);
      const { findCalculation } = await import('../calculations/catalogue.js');
      out(options.json ? `${JSON.stringify(worked, null, 2)}\n` : workText(worked, findCalculation(name)));
    });

  benchleaf
    .command('list')
    .description('list what there is: calculations, lessons, documents, sheets or figures')
    .argument('[what]', Object.keys(lists).join(', '), 'calculations')
    .option('--json', 'print data instead of text')
    .action(async (what: string, options: { json?: true }) => {
      if (!Object.hasOwn(lists, what))
        throw new CommandError(`there is no list of ${JSON.stringify(what)}`, [
          `There are ${Object.keys(lists).join(', ')}.`,
        ]);
      const { entries, text } = await lists[what as keyof typeof lists]();
      out(options.json ? `${JSON.stringify(entries, null, 2)}\n` : text);
    });

  benchleaf
    .command('check')
    .description('check lessons, kits and courses: every problem in many variants, and every page')
    .argument('[paths...]', 'files, or lessons by name; the sample course if none is named')
    .option('--kit <file>', 'the workshop that lessons are worked for')
    .option('--json', 'print data instead of text')
    .addHelpText(
      'after',
      '\nExamples:\n  benchleaf check lessons/16-simple-indexing\n  benchleaf check lessons/kits/harrow-lane.yaml',
    )
    .action(async (paths: string[], options: { kit?: string; json?: true }) => {
      const { checkAll } = await import('../pack/check.js');
      const checked = checkAll(paths, options.kit);
      const warnings = checked.flatMap((one) => one.warnings);
      if (warnings.length > 0) err(`${printDiagnostics(warnings, new Map())}\n`);
      out(options.json ? `${JSON.stringify(checked, null, 2)}\n` : checkedText(checked));
    });

  return benchleaf;
}

/** What was typed, and from the kit what that leaves open. */
async function withKit(file: string, calculation: string, typed: Readonly<Record<string, string>>) {
  const { findCalculation } = await import('../calculations/catalogue.js');
  const { givensFromKit } = await import('../kit/givens.js');
  const { openKits } = await import('../kit/open.js');
  const keys = Object.keys(findCalculation(calculation).given);
  const [kit] = openKits([file]);
  return kit ? givensFromKit(kit, calculation, keys, typed) : typed;
}

/** `teeth=60 module=0.8` as given values. */
function readPairs(pairs: readonly string[]): Record<string, string> {
  const values: Record<string, string> = Object.create(null);
  for (const pair of pairs) {
    const at = pair.indexOf('=');
    if (at < 1)
      throw new CommandError(`${JSON.stringify(pair)} is not of the form name=value`, [
        'Write for instance teeth=60',
      ]);
    const key = pair.slice(0, at);
    if (key in values) throw new CommandError(`${key} is given twice`);
    values[key] = pair.slice(at + 1);
  }
  return values;
}

/** Runs the command line and returns its exit code: 0 done, 1 content, 2 command, 3 machine. */
export async function run(words: readonly string[], streams: Streams): Promise<number> {
  try {
    await program(streams).parseAsync([...words], { from: 'user' });
    return 0;
  } catch (thrown) {
    const error = missingPart(thrown) ?? thrown;
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof ContentError || error instanceof ReportedError)) throw error;
    streams.err(faultText(error));
    return error instanceof ContentError ? 1 : error.exitCode;
  }
}

function version(): string {
  const file = new URL('../../package.json', import.meta.url);
  return (JSON.parse(readFileSync(file, 'utf8')) as { version: string }).version;
}
