import type { Move } from '../calculations/moves.js';
import { decimals } from '../calculations/working.js';
import { quarterCount } from '../figures/drawings/quarter-marks.js';
import type { Kit } from '../kit/schema.js';
import { cautions } from '../lesson/cautions.js';
import type { NamedValue } from '../lesson/lesson.js';
import { checksOf } from '../problems/checks.js';
import type { CheckLine } from '../problems/problem.js';
import { inWords } from '../problems/show.js';
import { subjectOf } from '../problems/subject.js';
import { safestMove } from '../reference/dividing/safest-move.js';
import type { BigNumber, QuarterMark, SheetHead, ShopCard } from '../sheets/model.js';
import { formatLength, formatNumber, type UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';
import { counted } from '../units/words.js';
import { type CardWorkings, cardWorkings } from './card-workings.js';
import type { Job } from './job.js';

const THIN = '\u202F';

/**
 * The card that lies beside the machine while one wheel is cut.
 *
 * @throws {InputError} a value that a calculation refuses; {DisagreementError} two routes that differ
 */
export function shopCard(job: Job, kit: Kit, head: SheetHead, units: UnitSystem): ShopCard {
  const worked = cardWorkings(job, kit);
  const size = (mm: unknown, places = 2) => formatLength(Number(mm), units, places);
  const wheel = worked.run('wheel')?.found ?? {};
  const travel = worked.run('travel')?.found;
  return {
    head,
    job: job.name,
    given: given(job, worked, units),
    big: [
      {
        label: 'Blank diameter',
        value: size(wheel.outsideDiameter),
        note: units === 'mm' ? '+0 −0.03 by common practice' : '+0 −0.001 by common practice',
      },
      { label: 'Depth of cut', value: size(wheel.depthOfCut), note: 'if the stamp differs, it wins' },
      crankNumber(worked),
      travel
        ? {
            label: 'Travel',
            value: atLeast(travel.travel, 1, units),
            note: `${atLeast(travel.approach, 2, units)} and clearance past each face`,
          }
        : { label: 'Travel', value: '—', note: 'no wheel cutter of this module in the kit' },
    ],
    quarters: quarters(job.teeth),
    lines: lines(kit, worked, units),
    conventions: conventions(job),
    cautions: [cautions.indexing, cautions['cutter-guard'], cautions['set-up-clearance']],
    checks: checks(worked, units),
  };
}

/** A length that must not be cut short: rounded up at its last figure. */
function atLeast(mm: unknown, places: number, units: UnitSystem): string {
  const unit = (units === 'mm' ? 1 : MM_PER_INCH) / 10 ** (units === 'mm' ? places : 3);
  const up = Math.ceil(Number(mm) / unit - 1e-9) * unit;
  return formatLength(up, units, units === 'mm' ? places : 2);
}

function given(job: Job, { cutterDiameter, thickness }: CardWorkings, units: UnitSystem): NamedValue[] {
  const named = (name: string, symbol: string, value: string) => ({ name, symbol, value });
  return [
    named('teeth', 'z', String(job.teeth)),
    named('module', 'm', `${decimals(job.module, 4)}${THIN}mm`),
    ...(job.leaves === undefined ? [] : [named('pinion leaves', 'n', String(job.leaves))]),
    ...(cutterDiameter === undefined
      ? []
      : [named('cutter diameter', 'D', formatLength(cutterDiameter, units))]),
    named('stack', 'b', `${formatLength(thickness, units)} (${counted(job.blanks, 'blank')})`),
  ];
}

/** The crank's movement for one tooth, on the circle where a slip shows. */
function crankMove(worked: CardWorkings): (Move & { readonly turns: number }) | undefined {
  const crank = worked.run('crank');
  const turns = Number(crank?.found.turns ?? 0);
  const moves = (crank?.found.settings ?? []) as readonly Move[];
  const move = safestMove(moves, Number(crank?.values.ratio), turns);
  return move && { ...move, turns };
}

function crankNumber(worked: CardWorkings): BigNumber {
  const label = 'Each tooth';
  const move = crankMove(worked);
  if (!move)
    return worked.run('crank')
      ? { label, value: 'none', note: 'not possible on these plates' }
      : { label, value: '—', note: 'no dividing head in the kit' };
  const { holes, circle, turns } = move;
  if (holes === 0) return { label, value: counted(turns, 'turn'), note: 'whole turns, no spaces' };
  return {
    label,
    value: `${holes} on ${circle}`,
    note: `${turns === 0 ? 'no whole turn' : counted(turns, 'whole turn')}; ${counted(holes, 'space')}, ${holes + 1} holes inside the arms`,
  };
}

function quarters(teeth: number): QuarterMark[] {
  const marks = ['¼', '½', '¾', '1'] as const;
  return marks.map((mark, place) => ({
    mark,
    teeth: `${quarterCount(teeth, place + 1)} teeth`,
    angle: `${90 * (place + 1)}°`,
  }));
}

function lines(kit: Kit, worked: CardWorkings, units: UnitSystem): NamedValue[] {
  const [head] = kit.heads;
  const line = (name: string, key: string, least = false): NamedValue[] => {
    if (!worked.all.runs.has(key.split('.')[0] ?? '')) return [];
    const { value, unit, symbol } = subjectOf(key, worked.all);
    return [
      {
        name,
        symbol,
        value:
          unit !== 'mm'
            ? inWords(value, unit, units)
            : least
              ? atLeast(value, 2, units)
              : formatLength(Number(value), units),
      },
    ];
  };
  const speed = Number(worked.run('speed')?.found.revPerMin ?? 0);
  // The next pulley down, or one that is within a twentieth.
  const pulley = kit.spindleSpeeds.filter((one) => one <= 1.05 * speed).sort((a, b) => b - a)[0];
  const divisions = worked.run('dial')?.found.divisions;
  return [
    ...line('root diameter', 'wheel.rootDiameter'),
    ...line('approach', 'travel.approach', true),
    ...(head ? [{ name: 'head', symbol: 'R', value: `${head.name}, ${head.ratio} : 1` }] : []),
    ...(speed > 0
      ? [
          {
            name: 'spindle speed',
            symbol: 'S',
            value: `${formatNumber(speed, 0)}${THIN}rev/min${pulley ? `; set ${pulley}` : ''}`,
          },
        ]
      : []),
    ...(typeof divisions === 'number'
      ? [
          {
            name: 'dial, divisions to full depth',
            symbol: '',
            value: `${formatNumber(divisions, 0)}${kit.slide?.dialReads === 'diameter' ? ' (the dial reads diameter)' : ''}`,
          },
        ]
      : []),
  ];
}

function conventions({ convention, depthForm, leaves }: Job): string[] {
  return [
    convention === '2.76'
      ? `Blank by the trade allowance, z + ${depthForm === '3.00' ? '2.50 (round-bottom form)' : '2.76'}.`
      : `Blank by leaf count: addendum for ${leaves} leaves.`,
    `Depth by the form ${depthForm}, in modules. Turn the blank on the arbor it is cut on.`,
  ];
}

function checks(worked: CardWorkings, units: UnitSystem): CheckLine[] {
  return ['wheel.outsideDiameter', 'wheel.depthOfCut', 'crank.settings', 'travel.travel']
    .filter((key) => worked.all.runs.has(key.split('.')[0] ?? ''))
    .flatMap((key) => checksOf(subjectOf(key, worked.all), worked.all, units));
}
