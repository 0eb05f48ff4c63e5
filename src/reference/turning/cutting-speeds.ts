import { speedRanges, speedSources } from '../../handbook/cutting/speeds.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table, words } from '../sheet.js';

const METRES_PER_FOOT = 0.3048;
/** m/min, or ft/min, that cover the ranges, slowest first. */
const SPEEDS = {
  mm: [15, 20, 25, 30, 45, 60, 75, 90, 105],
  inch: [50, 65, 80, 100, 150, 200, 250, 300, 350],
};
/** Work or cutter: mm, or inches. */
const DIAMETERS = {
  mm: [3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100],
  inch: [
    ...['1/8', '3/16', '1/4', '5/16', '3/8', '1/2', '5/8', '3/4', '7/8', '1', '1 1/4', '1 1/2', '1 3/4', '2'],
    ...['2 1/2', '3', '3 1/2', '4'],
  ],
};

export const cuttingSpeeds: SheetKind = {
  name: 'cutting-speeds',
  title: 'Cutting speeds',
  line: 'ranges by material, and turns a minute for cutters and work of 3 to 100 mm',
  make: (desk, { spindleSpeeds }) => {
    for (const source of speedSources) desk.read(source);
    return {
      ...(spindleSpeeds.length > 0 && {
        machine: `Our spindle speeds: ${spindleSpeeds.join(', ')} turns a minute`,
      }),
      conventions: [
        'Ranges are for high-speed steel, as tables print them: a place to start, for tables differ by up to two to one. Carbide runs at two to six times the speed by the same tables, on a stiff machine; carbon steel at about half.',
        'Form cutters run slower than plain ones, by up to 60 % in the same tables. A pinion cutter in carbon steel: 19 to 22 m/min (62 to 72 ft/min) by its maker’s chart.',
        'Turns a minute are those of what turns, work or cutter, by its outside diameter. Take the spindle speed next below.',
      ],
      cautions: ['cutter-guard', 'fly-cutter'],
      tables: [byMaterial(), turnsAMinute(desk)],
    };
  },
};

function byMaterial(): Table {
  const uses = ['turning', 'milling', 'drilling'] as const;
  const head = { turning: 'Turning', milling: 'Milling', drilling: 'Drilling' };
  const units = [
    { unit: 'm/min', per: 1 },
    { unit: 'ft/min', per: 1 / METRES_PER_FOOT },
  ];
  return {
    title: 'By material',
    columns: [
      words('Material'),
      ...units.flatMap(({ unit }) => uses.map((use) => ({ ...words(head[use]), unit }))),
    ],
    rows: speedRanges.map((range) => ({
      cells: [
        range.material,
        ...units.flatMap(({ per }) =>
          uses.map((use) =>
            [...new Set(range[use])].map((speed) => formatNumber(speed * per, 0)).join('\u00A0to\u00A0'),
          ),
        ),
      ],
    })),
  };
}

function turnsAMinute(desk: Desk): Table {
  const unit = desk.units === 'mm' ? 'm/min' : 'ft/min';
  const per = desk.units === 'mm' ? 1 : METRES_PER_FOOT;
  return {
    title: `Turns a minute, by cutting speed in ${unit}`,
    apart: true,
    columns: [
      figures('Diameter', desk.lengths),
      ...SPEEDS[desk.units].map((speed) => figures(String(speed), unit)),
    ],
    rows: DIAMETERS[desk.units].map((diameter) => ({
      cells: [
        String(diameter),
        ...SPEEDS[desk.units].map((speed) =>
          desk
            .work('cut.spindleSpeed', {
              cuttingSpeed: speed * per,
              diameter: typeof diameter === 'number' ? diameter : `${diameter}in`,
            })
            .number('revPerMin', 0),
        ),
      ],
    })),
  };
}
