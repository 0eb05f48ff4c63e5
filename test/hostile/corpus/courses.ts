import { course, type Nasty, nasties, PROTOTYPE_NAMES, SMUGGLED } from '../nasty.js';

const KIT = new URL('../../../lessons/kits/harrow-lane.yaml', import.meta.url).pathname;
const named = (title: string, club = 'Nobody', more = '') =>
  `course: ${JSON.stringify(title)}\nclub: ${JSON.stringify(club)}\nkit: ${KIT}\nlessons: [01-small]\n${more}`;
const job = (name: string, more = '') =>
  named(
    'Nasty',
    'Nobody',
    `jobs:\n  - { name: ${JSON.stringify(name)}, teeth: 60, leaves: 8, module: 0.8, blankThickness: 2${more} }\n`,
  );

export const courseNasties: Nasty[] = [
  ...nasties('course', 'told', {
    'a kit that climbs': () => course('', '../../../../../../etc/passwd'),
    'a kit in a folder of the system': () => course('', '/etc/passwd'),
    'a kit that is a folder': () => course('', '/'),
    'a kit that never ends': () => course('', '/dev/zero'),
    'a kit that waits': () => course('', '/dev/stdin'),
    'a kit that is this process': () => course('', '/proc/self/mem'),
    'a kit that is the log of the system': () => course('', '/proc/kmsg'),
    'a kit with a NUL in its name': () => course('', '"a\\0b"'),
    'a kit with a name past all lengths': () => course('', 'k'.repeat(499)),
    'a kit at an address': () => course('', 'http://127.0.0.1/kit.yaml'),
    'a lesson that climbs': () => course('lessons: [../../../../../../etc]\n', KIT),
    'a lesson with a NUL in its name': () => course('lessons: ["a\\0b"]\n', KIT),
    'a lesson called __proto__': () => course('lessons: [__proto__, constructor]\n', KIT),
    'a thousand lessons': () => course(`lessons: [${Array(1000).fill('01-small')}]\n`, KIT),
    'sixty lessons that are not there': () =>
      course(`lessons: [${Array.from({ length: 60 }, (_, at) => `${'x'.repeat(400)}${at}`)}]\n`, KIT),
    'a billion teeth': () =>
      named('Nasty', 'Nobody', 'jobs: [{ name: a, teeth: 1000000000, module: 1, blankThickness: 1 }]\n'),
    'a billion arms': () => job('a', ', hole: 6, crossing: { arms: 1000000000 }'),
    'a thousand jobs': () =>
      named(
        'Nasty',
        'Nobody',
        `jobs: [${Array(1000).fill('{ name: a, teeth: 60, module: 1, blankThickness: 1 }')}]\n`,
      ),
    'a title with NULs': () => named('a\0b'),
    'a title of lone halves': () => `course: "a\\ud800"\nclub: b\nkit: ${KIT}\nlessons: [01-small]\n`,
    'a title turned round': () => named('a \u202Egnp.exe'),
    'a variant of a hundred thousand signs': () => named('a', 'b', `variant: "${'7'.repeat(100_000)}"\n`),
    ...Object.fromEntries(
      PROTOTYPE_NAMES.map((name) => [
        `${name} as a name`,
        () => course(`${name}: { polluted: true }\nlessons: [01-small]\n`, KIT),
      ]),
    ),
  }),
  ...nasties('course', 'safe', {
    ...Object.fromEntries(
      SMUGGLED.filter((text) => text.length <= 80).map((text) => [
        `${text} as title, club and job`,
        () =>
          named(
            text,
            text,
            `jobs:\n  - { name: ${JSON.stringify(text)}, teeth: 60, leaves: 8, module: 0.8, blankThickness: 2 }\n`,
          ),
      ]),
    ),
    'a job that climbs': () => job('../../../etc/passwd'),
    'a job called after a device': () => job('CON'),
    'a job in braces': () => job('{{constructor}} {{#each this}}'),
    'a job called __proto__': () => job('__proto__'),
  }),
];
