import { speedRanges } from '../../handbook/cutting/speeds.js';
import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { type Card, type CardKind, type CardNumber, type CutJob, told, words } from './card.js';
import { pulleyFor } from './pulley.js';
import { blankOf, wheelCutterFor } from './wheel.js';

const FEET_PER_METRE = 1 / 0.3048;

export const brass: CardKind = {
  name: 'brass',
  title: 'Brass',
  line: 'speed, rake, chip and lead; the speeds of each job, and the kit’s own pulleys for them',
  conventions: [
    'Cutting speeds are for high-speed steel. The range for turning is as design tables print it; tables differ by up to two to one.',
    'The big numbers are turns a minute at the cutting speed of the job. Pulley: the next below, or one that is within a twentieth above.',
    'Rake and chip: common practice, no source.',
  ],
  make: (desk, kit, jobs) =>
    jobs.length === 0 ? [theCard(desk, kit)] : jobs.map((job) => theCard(desk, kit, job)),
};

function theCard(desk: Desk, kit: Kit, job?: CutJob): Card {
  const { turning = [0, 0] } = speedRanges.find(({ material }) => material === 'Brass') ?? {};
  const said =
    desk.units === 'mm'
      ? `${turning.join(' to ')} m/min`
      : `${turning.map((speed) => formatNumber(speed * FEET_PER_METRE, 0)).join(' to ')} ft/min`;
  return {
    title: 'Brass',
    ...(job ? { about: job.name, numbers: speeds(desk, kit, job) } : {}),
    passages: [
      words('Speed', told`Turning: ${said} by tables. Start low.`),
      words('Rake', told`None: a keen edge digs in. Stone a small flat on the lips of a drill.`),
      words('Chip', told`Short and bright. Dust or a squeal: the edge is blunt, or rubs.`),
      words('Lead', told`No food at the bench. Brush, never blow. Wash your hands.`),
    ],
    caution: 'turning-brass',
  };
}

const pulleySaid = (pulley: number | undefined, { spindleSpeeds }: Kit): string =>
  pulley !== undefined ? `: set ${pulley}` : spindleSpeeds.length > 0 ? ': no pulley so slow' : '';

/** For the blank and for the cutter, each at the job’s cutting speed. */
function speeds(desk: Desk, kit: Kit, job: CutJob): CardNumber[] {
  const { cuttingSpeed } = job;
  const number = (label: string, diameter: number): CardNumber => {
    const worked = desk.work('cut.spindleSpeed', { cuttingSpeed, diameter });
    const pulley = pulleyFor(Number(worked.found.revPerMin), kit);
    return {
      label,
      value: told`${worked.number('revPerMin', 0)}`,
      note: told`rev/min${pulleySaid(pulley, kit)}`,
    };
  };
  const cutter = wheelCutterFor(job, kit);
  return [
    number('Turn the blank at', Number(blankOf(job, desk).found.outsideDiameter)),
    ...(cutter ? [number('Cut its teeth at', cutter.diameter)] : []),
  ];
}
