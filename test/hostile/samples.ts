import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { course, lesson, type Nasty } from './nasty.js';

const read = (...parts: string[]): string => readFileSync(join('lessons', ...parts), 'utf8');

const KIT = resolve('lessons/kits/harrow-lane.yaml');

/** A lesson with a little of everything, that is worked in no time. */
const SMALL = `---
title: How far apart
cautions: [drilling-plates]
goals: [find a distance]
example: { teeth: 60, leaves: 8, module: 0.8 mm }
symbols: { D: a diameter (mm) }
works:
  wheel: { calculation: wheel.blank, convention: 2.76 }
  half: { formula: teeth / 2, check: half * 2 = teeth }
problems:
  centres:
    calculation: mesh.centreDistance
    vary: { teeth: 48..96 by 4, leaves: [6, 8, 10], module: [0.6, 0.8] mm }
    ask: A wheel of {{teeth}} teeth drives {{leaves}} leaves, module {{mm module}}. How far apart?
    find: centreDistance
    answer: { to: 0.01 mm, accept: 0.01 mm }
  spaces:
    vary: { teeth: 48..96 by 4 }
    keep: [teeth / 4 >= 10]
    works:
      half: { formula: teeth / 2, check: half * 2 = teeth }
    find: half
    ask: What is half of {{teeth}}?
    slips:
      double: { formula: teeth * 2, says: That is twice. }
---
The **pitch circles** touch. Ours have {{teeth}} teeth, $d = m z$.

| a | b |
|---|---|
| 1 | 2 |

{{worked "mesh.centreDistance"}}

{{figure "pitch-circles" teeth=teeth leaves=leaves module=module}}

- one
- two

{{problems}}
`;

/** Good files of each kind, to be spoilt. */
export const samples: Readonly<Record<Nasty['kind'], readonly string[]>> = {
  lesson: [SMALL, lesson()],
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
