import { describe, expect, it } from 'vitest';
import type { Train } from '../../../src/geometry/trains/find.js';
import { beatsBySwinging } from '../../../src/handbook/trains/swing.js';
import { work } from '../../../src/index.js';
import { near } from './near.js';

const found = (name: string, given: Record<string, unknown>) => work(name, given).found;
const inches = (given: Record<string, unknown>): number =>
  (found('pendulum.length', given).length as number) / 25.4;
const perMinute = (beats: number) => ({ beatsPerHour: 60 * beats });

/** Gravity that makes a seconds pendulum so many inches long. */
const gravityOf = (seconds: number): number => (Math.PI ** 2 * seconds * 25.4) / 1000;
const LONDON = { latitude: 51.5 };

describe('trains', () => {
  // Taking it Apart – And Determining Beats per Hour, p. 9 (read).
  near('train.beats', { wheels: [80, 72], pinions: [12, 8], escapeTeeth: 30 }, 'beatsPerHour', 3600, 0);
  // D. de Carle, Practical Clock Repairing: regulator (from memory); the escape arbor turns once a minute.
  near('train.beats', { wheels: [64, 60], pinions: [8, 8], escapeTeeth: 30 }, 'beatsPerHour', 3600, 0);
  // English longcase (from memory).
  near('train.beats', { wheels: [60, 56], pinions: [8, 7], escapeTeeth: 30 }, 'beatsPerHour', 3600, 0);
  // The usual lever watch (from memory).
  near(
    'train.beats',
    { wheels: [80, 75, 70], pinions: [10, 10, 7], escapeTeeth: 15 },
    'beatsPerHour',
    18_000,
    0,
  );
  // Alternative Methods to Determine the Correct Pendulum Length for a Clock (read): an American movement. The page
  // rounds the escape wheel's 4888.93 teeth an hour to 4889 before it doubles, and so prints 9778.
  near(
    'train.beats',
    { wheels: [26, 60, 42, 45], pinions: [60, 8, 7, 7], escapeTeeth: 39 },
    'beatsPerHour',
    2 * 4889,
    0.2,
  );
  near(
    'train.beats',
    { wheels: [26, 60, 42, 45], pinions: [60, 8, 7, 7], escapeTeeth: 39 },
    'beatsPerMinute',
    163,
    0.05,
  );

  it('finds each published train of 60 from its ratio, and its counts from one another', () => {
    const trains = found('train.find', { ratio: 60, stages: 2 }).trains as Train[];
    for (const [wheels, pinions] of [
      [
        [80, 72],
        [12, 8],
      ],
      [
        [64, 60],
        [8, 8],
      ],
      [
        [60, 56],
        [8, 7],
      ],
    ] as const) {
      expect(trains).toContainEqual({ wheels, pinions, ratio: 60, error: 0 });
      for (const place of [0, 1]) {
        const train = { beatsPerHour: 3600, escapeTeeth: 30, wheels, pinions };
        const asked = (counts: readonly number[]) =>
          counts.map((count, i) => (i === place ? '?' : count)).join();
        expect(found('train.missing', { ...train, wheels: asked(wheels) }).teeth).toBe(wheels[place]);
        expect(found('train.missing', { ...train, pinions: asked(pinions) }).teeth).toBe(pinions[place]);
      }
    }
  });

  it('Missing gears example, geartrains.com (read): 43 200 teeth of the escape wheel in twelve hours', () => {
    // 80:13, 78:6, 72:6 and an escape wheel of 45, the first wheel turning once in twelve hours. The page lets one
    // tooth pass each second and calls that a seconds pendulum; by two beats a tooth it beats half-seconds.
    const train = { wheels: [80, 78, 72], pinions: [13, 6, 6] };
    expect(found('train.ratio', train).ratio).toBe(43_200 / 45);
    const beats = found('train.beats', { ...train, escapeTeeth: 45 }).beatsPerHour as number;
    expect(beats / 12).toBe(7200);
  });

  // E. B. Denison, A Rudimentary Treatise on Clock and Watch Making, 1850, p. 29 (read): sixteen turns in eight days;
  // the great wheel of 96 on a pinion of 8 is trade usage (from memory).
  near('train.duration', { wheel: 96, pinion: 8, turns: 16 }, 'days', 8, 0);
});

describe('motion work', () => {
  // The Motion Works, watchmaking.se (read): one to twelve. The counts: trade usage, and a clock photographed (read).
  for (const [wheels, pinions] of [
    [
      [36, 40],
      [12, 10],
    ],
    [
      [48, 60],
      [24, 10],
    ],
    [[72], [6]],
    [
      [60, 36],
      [15, 12],
    ],
  ] as const)
    near('train.ratio', { wheels, pinions }, 'ratio', 12, 0);

  it('cannon 12, minute 36, pinion 10, hour 40 is among the sets, but not on equal centres', () => {
    const set = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 };
    const bounds = { minLeaves: 10, maxLeaves: 12 };
    expect(found('train.motionWork', { ...bounds, equalCentres: false }).sets).toContainEqual(set);
    // 12 + 36 = 48 against 10 + 40 = 50: one module will not do for both pairs.
    expect(found('train.motionWork', bounds).sets).not.toContainEqual(set);
  });
});

describe('pendulums: four values of gravity are in print, and each must be named', () => {
  // Standard gravity (textbooks, from memory): 994 mm and 248 mm; 39.119 in is the same length.
  near('pendulum.length', { beatsPerHour: 3600 }, 'length', 993.6, 0.05);
  near('pendulum.length', { beatsPerHour: 3600 }, 'length', 39.119 * 25.4, 0.0005 * 25.4);
  near('pendulum.length', { beatsPerHour: 7200 }, 'length', 248, 0.5);
  // F. A. Griffiths, The Artillerist's Manual (read): 39.14 in at London, half seconds 9.8 in, quarter seconds 2.45.
  near('pendulum.length', { beatsPerHour: 3600, ...LONDON }, 'length', 39.14 * 25.4, 0.005 * 25.4);
  near('pendulum.length', { beatsPerHour: 7200, ...LONDON }, 'length', 9.8 * 25.4, 0.05 * 25.4);
  near('pendulum.length', { beatsPerHour: 14_400, ...LONDON }, 'length', 2.45 * 25.4, 0.005 * 25.4);
  // Kater, quoted in a nineteenth-century book (read): 39.13860 in, 1818, later 39.13929. The earth of WGS 84 gives
  // 39.1404 in at 51.5° north: the old determinations are low by three and five parts in a hundred thousand.
  near('pendulum.length', { beatsPerHour: 3600, ...LONDON }, 'length', 39.13929 * 25.4, 4e-5 * 994);
  near('pendulum.length', { beatsPerHour: 3600, ...LONDON }, 'length', 39.1386 * 25.4, 6e-5 * 994);
  near('pendulum.length', { beatsPerHour: 3600, gravity: 9.811748 }, 'length', 39.13929 * 25.4, 1e-4);
  // Paris, 440.5 lignes (seen quoted): 2.2558291 mm to the ligne. WGS 84 gives 993.90 mm at 48.84° north; the old
  // figure is two parts in ten thousand lower, and is not followed.
  near(
    'pendulum.length',
    { beatsPerHour: 3600, latitude: '48d50m' },
    'length',
    440.5 * 2.2558291,
    0.00025 * 994,
  );

  it('the rule of 39.14 (60/n)², Griffiths (read), holds in London', () => {
    for (let beats = 30; beats <= 300; beats += 5)
      expect(inches({ ...perMinute(beats), ...LONDON }) / (39.14 * (60 / beats) ** 2)).toBeCloseTo(1, 4);
  });

  it('the rule of 141120/n² hides a seconds pendulum of 39.2 in', () => {
    // Trade page (read), as Whitehurst assumed (read): 42 a minute is 80 in, 84 a minute 20 in. It is no gravity of
    // this earth; against the standard one it makes every pendulum 0.2 % too long.
    const gravity = gravityOf(141_120 / 3600);
    expect(gravity).toBeGreaterThan(
      found('pendulum.length', { beatsPerHour: 3600, latitude: 56 }).gravityUsed as number,
    );
    expect(inches({ ...perMinute(42), gravity })).toBeCloseTo(80, 6);
    expect(inches({ ...perMinute(84), gravity })).toBeCloseTo(20, 6);
    expect(inches({ ...perMinute(60), gravity }) / inches(perMinute(60))).toBeCloseTo(1.0021, 4);
  });

  it('the Act’s yard against the pendulum, 36 : 39.1393 (quoted, read)', () => {
    const gravity = gravityOf(39.1393);
    expect(inches({ beatsPerHour: 3600 * Math.sqrt(39.1393 / 36), gravity })).toBeCloseTo(36, 6);
  });

  it.each([
    // Tables of the kind Britten prints (from memory). Both gravities round to them but for 120 beats, where London has
    // 9.785 and only the standard one 9.780.
    [72, 27.2, 0.05],
    [80, 22, 0.05],
    [90, 17.4, 0.05],
    [100, 14.1, 0.05],
    [120, 9.78, 0.0055],
    [144, 6.8, 0.05],
  ])('%d beats a minute: %f in', (beats, length, within) => {
    for (const place of [{}, LONDON])
      expect(Math.abs(inches({ ...perMinute(beats), ...place }) - length)).toBeLessThanOrEqual(within);
  });

  // NIMA TR8350.2, 1997 (from memory): gravity at the equator and the pole. GRS 80 has 9.7803267715 at the equator
  // (from memory), 0.15 parts per million more; WGS 84 is followed.
  near('pendulum.length', { beatsPerHour: 3600, latitude: 0 }, 'gravityUsed', 9.7803253359, 1e-10);
  near('pendulum.length', { beatsPerHour: 3600, latitude: 90 }, 'gravityUsed', 9.8321849378, 1e-10);
  near('pendulum.length', { beatsPerHour: 3600, latitude: 0 }, 'gravityUsed', 9.7803267715, 2e-6);
});

/** Seconds a day that a clock loses when its seconds pendulum grows by so many parts. */
function lostInADay(growth: number): number {
  const length = (beats: number) => found('pendulum.length', { beatsPerHour: beats }).length as number;
  let [low, high] = [3590, 3610];
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (length(middle) > length(3600) * (1 + growth)) low = middle;
    else high = middle;
  }
  return 86_400 * (1 - low / 3600);
}

describe('what warmth and a wide swing do to a pendulum', () => {
  it('a steel rod loses 0.27 s a day for a degree Fahrenheit, 0.49 for a degree Celsius', () => {
    // A printed page (read) gives 11.3 parts in a million per °C (6.3 per °F), then 0.27 s a day “per degree” in a
    // sentence that names Celsius first, and 16 s a day for 33 °C. Only Fahrenheit makes the 0.27.
    expect(lostInADay(6.3e-6)).toBeCloseTo(0.272, 3);
    expect(lostInADay(11.3e-6)).toBeCloseTo(0.488, 3);
    expect(lostInADay(33 * 11.3e-6)).toBeCloseTo(16.1, 1);
  });

  it('a wooden rod that loses 6 s a day over 33 °C grows 4.2 parts in a million for a degree (read)', () => {
    expect(lostInADay(33 * 4.2e-6)).toBeCloseTo(6, 1);
  });

  it('two textbook questions, their answers worked here', () => {
    // Brass, 19 parts in a million, set at 18 °C and run at 0 °C, in an hour; invar, 0.7, from 20 to 30 °C, in a day.
    // Dividing by the square root of 1 − αΔT is the same sum as here: the length falls by that share.
    expect(lostInADay(-18 * 19e-6) / 24).toBeCloseTo(-0.616, 3);
    expect(lostInADay(10 * 0.7e-6)).toBeCloseTo(0.3024, 4);
  });

  it('circular error: about 1.65 s a day times the square of the half swing in degrees (from memory)', () => {
    const { length } = found('pendulum.length', { beatsPerHour: 3600 });
    for (const swing of [1, 2, 3]) {
      const lost = 86_400 * (1 - beatsBySwinging(length as number, 9.80665, swing) / 3600);
      expect(lost / swing ** 2).toBeCloseTo(1.645, 2);
    }
  });
});
