import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { course, lesson, type Nasty } from './nasty.js';

const read = (...parts: string[]): string => readFileSync(join('lessons', ...parts), 'utf8');

const KIT = resolve('lessons/kits/harrow-lane.yaml');

/** A lesson with a little of everything, that is worked in no time. */
const MANY_KINDS = readFileSync('test/hostile/many-kinds.txt', 'utf8');

/** Good files of each kind, to be spoilt. */
export const samples: Readonly<Record<Nasty['kind'], readonly string[]>> = {
  lesson: [MANY_KINDS, lesson()],
  kit: readdirSync('lessons/kits').map((name) => read('kits', name)),
  course: [
    course('', KIT),
    course(
      `lessons: [01-small]
jobs:
  - name: Class wheel
    teeth: 60
    leaves: 8
    module: 0.8
    blankThickness: 2
    blanks: 4
    backing: 1.5
    hole: 6
    crossing: { arms: 5, rimInsideDiameter: 40.8, hubDiameter: 14, armWidthAtRim: 2.4, armWidthAtHub: 3.4, filletRadius: 1 }
`,
      KIT,
    ),
  ],
  list: [
    'name,seat,print,units\nAnna,1,plain,mm\nBob,2,large,inch\n"O\'Hara, Pat",3,,\n',
    'name\nŁukasz\nMüller\n',
  ],
};

/** The lessons that come with Benchleaf. */
export const ownLessons = (): readonly string[] =>
  readdirSync('lessons')
    .filter((name) => /^\d/.test(name))
    .map((name) => read(name, 'lesson.md'));
