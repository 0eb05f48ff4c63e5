import { join } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { CommandError } from '../diagnostics/errors.js';
import { nearest } from '../diagnostics/suggest.js';
import type { Choice } from '../pack/choose.js';
import { type Kind, kindNames, printedKinds } from '../pack/kinds.js';
import type { Order } from '../pack/plan.js';
import { MOST_SHARDS, type Shard } from '../pack/shard.js';
import type { Streams } from './streams.js';
import { madeText } from './text.js';
import { watchTold } from './watch.js';

interface MakeOptions {
  readonly kit?: string;
  readonly out: string;
  readonly paper: 'a4' | 'letter';
  readonly units?: 'mm' | 'inch';
  readonly print: 'plain' | 'large';
  readonly variant?: string;
  readonly learners?: string;
  readonly versions?: 2;
  readonly only: ReadonlySet<Kind>;
  readonly printerScale?: { readonly x: number; readonly y: number };
  readonly shard?: Shard;
  readonly cache: boolean;
  readonly json?: true;
  readonly quiet?: true;
  readonly watch?: true;
}

/** Adds the command that prints. */
export function addMake(benchleaf: Command, streams: Streams): void {
  benchleaf
    .command('make')
    .description('print a course, or lessons, as PDF files')
    .argument(
      '[what...]',
      'a course file, lessons by folder or name, or reference sheets, templates and cards by name; the sample course if none is named',
    )
    .option('--kit <file>', 'the workshop whose equipment the numbers are for')
    .option('--out <folder>', 'where the files go', 'out')
    .addOption(new Option('--paper <size>', 'size of the paper').choices(['a4', 'letter']).default('a4'))
    .addOption(
      new Option('--units <units>', 'units of length; the kit’s own unless told').choices(['mm', 'inch']),
    )
    .addOption(
      new Option('--print <size>', 'size of the print; large is 18 point')
        .choices(['plain', 'large'])
        .default('plain'),
    )
    .option('--variant <code>', 'print the numbers of this variant code again; “new” for fresh numbers')
    .option('--learners <file>', 'a problem sheet and key for each name in this CSV file')
    .addOption(
      new Option('--versions <count>', 'two sheets, A and B, that take turns along the seats').argParser(
        readVersions,
      ),
    )
    .addOption(
      new Option('--only <kinds>', `some kinds only, with commas between: ${kindNames.join(', ')}`)
        .argParser(readKinds)
        .default(new Set(printedKinds), 'all that are printed'),
    )
    .addOption(
      new Option(
        '--printer-scale <scale>',
        'what 1 comes out as on your printer, such as X=0.998,Y=1.001: templates tell it, and are made a second time for that printer',
      ).argParser(readPrinterScale),
    )
    .addOption(
      new Option(
        '--shard <part>',
        'a part of a large class set, such as 3/8 for the third of eight: several machines share the work',
      ).argParser(readShard),
    )
    .option('--no-cache', 'print everything anew, and keep nothing for the next run')
    .option('--json', 'print data about what was made')
    .option('--quiet', 'say nothing but what goes wrong')
    .option('--watch', 'stay, and make again whatever changes when a file it is made from is saved')
    .addHelpText(
      'after',
      '\nExamples:\n  benchleaf make\n  benchleaf make lessons/courses/larkfield.yaml --learners class.csv\n' +
        '  benchleaf make 16-simple-indexing --kit lessons/kits/mill-yard.yaml --paper letter --print large\n' +
        '  benchleaf make lessons/06-blank-and-pinion-sizes --only handout --watch\n' +
        '  benchleaf make --only sheets\n' +
        '  benchleaf make card:diagnosis card:guards\n' +
        '  benchleaf make sheet:simple-indexing --kit lessons/kits/mill-yard.yaml\n' +
        '  benchleaf make --learners class.csv --shard 3/8\n' +
        '  benchleaf make template:printer-test template:crossing --printer-scale X=0.998,Y=1.001',
    )
    .action(async (what: string[], options: MakeOptions) => {
      const { shard } = options;
      if (options.out.trim() === '')
        throw new CommandError('--out names no folder', ['Write for instance --out out.']);
      for (const [other, told] of Object.entries({ '--json': options.json, '--shard': shard }))
        if (options.watch && told)
          throw new CommandError(`--watch and ${other} do not go together`, ['Leave one of them out.']);
      if (shard && options.variant === 'new')
        throw new CommandError('--shard and fresh numbers do not go together: each part would have others', [
          'Write a code after --variant, or leave it out.',
        ]);
      const { choose, courseAsked } = await import('../pack/choose.js');
      const { freshCode } = await import('../problems/code.js');
      const variant = options.variant === 'new' ? freshCode() : options.variant;
      const ask = () => asked(choose(what), { ...options, ...(variant === undefined ? {} : { variant }) });
      const quiet = options.quiet === true;
      if (options.watch) {
        const { watch } = await import('../pack/watch.js');
        return watch({ course: courseAsked(what), ask, ...watchTold(streams, quiet) });
      }
      const { order, folder } = ask();
      const { make } = await import('../pack/make.js');
      const made = await make(order, folder, {
        quiet,
        json: options.json === true,
        ...(shard === undefined ? {} : { shard }),
        ...(options.cache ? { cache: join(options.out, '.cache') } : {}),
      });
      if (options.json) streams.out(`${JSON.stringify(made, null, 2)}\n`);
      else if (!quiet) streams.out(madeText(made, folder));
    });
}

/** What was typed, as an order, and the folder that its documents go to. */
function asked({ course, kit, only }: Choice, options: MakeOptions): { order: Order; folder: string } {
  const { paper, print, units, variant, learners, versions, printerScale } = options;
  const order = {
    course,
    kit: options.kit ?? kit,
    paper,
    print,
    only: only ?? options.only,
    ...(units === undefined ? {} : { units }),
    ...(variant === undefined ? {} : { variant }),
    ...(learners === undefined ? {} : { learners }),
    ...(versions === undefined ? {} : { versions }),
    ...(printerScale === undefined ? {} : { printer: printerScale }),
  };
  return { order, folder: join(options.out, course.name) };
}

function readVersions(text: string): 2 {
  if (text.trim() === '2') return 2;
  throw new InvalidArgumentError('There may be 2, for neighbours.');
}

function readShard(text: string): Shard {
  const [, number, of] = (/^\s*(\d{1,4})\s*\/\s*(\d{1,4})\s*$/.exec(text) ?? []).map(Number);
  if (number !== undefined && of !== undefined && number >= 1 && number <= of && of <= MOST_SHARDS)
    return { number, of };
  throw new InvalidArgumentError(`Write it as 3/8: the third of eight; ${MOST_SHARDS} at most.`);
}

/** Further out than this, a printer is not printing at full size. */
const PRINTERS = { least: 0.9, most: 1.1 };

function readPrinterScale(text: string): { readonly x: number; readonly y: number } {
  const parts = text.split(',').map((part) => /^\s*([xy])\s*=\s*(\d(?:\.\d{1,6})?)\s*$/i.exec(part));
  const [x, y] = ['x', 'y'].map((letter) =>
    Number(parts.find((part) => part?.[1]?.toLowerCase() === letter)?.[2] ?? Number.NaN),
  ) as [number, number];
  const within = (scale: number): boolean => scale >= PRINTERS.least && scale <= PRINTERS.most;
  if (parts.length === 2 && within(x) && within(y)) return { x, y };
  throw new InvalidArgumentError(
    `Write it as X=0.998,Y=1.001, measured over true; each from ${PRINTERS.least} to ${PRINTERS.most}.`,
  );
}

function readKinds(text: string): ReadonlySet<Kind> {
  const words = text.split(',').map((word) => word.trim());
  const wrong = words.find((word) => !(kindNames as string[]).includes(word));
  if (wrong === undefined) return new Set(words as Kind[]);
  const near = nearest(wrong, kindNames);
  throw new InvalidArgumentError(`${near ? `Did you mean ${near}?` : `There are ${kindNames.join(', ')}.`}`);
}
