import type { CheckLine } from '../problems/problem.js';

/** What one work says, all of it together. */
export interface CheckView {
  readonly source: string;
  readonly said: string;
}

/** The checks of a working, gathered by the work they come from: a wheel's nine sizes stand in one table. */
export function checkViews(checks: readonly CheckLine[]): CheckView[] {
  return gathered(checks, (line) => {
    const place = line.source.slice(workOf(line).length + 2);
    return place ? `${place}, ${line.value}` : line.value;
  });
}

/** The same for a card, where there is room for the name of a work and what it gives. */
export function shortCheckViews(checks: readonly CheckLine[]): CheckView[] {
  return gathered(checks, ({ value }) => firstOf(value)).map(({ source, said }) => ({
    source: source.replace(/\s*[,(“].*$/, ''),
    said,
  }));
}

/** A long list is told by its first few. */
function firstOf(list: string): string {
  const items = list.split(', ');
  return items.length > 4 ? `${items.slice(0, 3).join(', ')} …` : list;
}

function gathered(checks: readonly CheckLine[], tell: (line: CheckLine) => string): CheckView[] {
  const works = new Map<string, CheckLine[]>();
  for (const check of checks) {
    const work = workOf(check);
    works.set(work, [...(works.get(work) ?? []), check]);
  }
  return [...works].map(([source, lines]) => ({ source, said: saidOf(lines, tell) }));
}

/** A source is cited as `work; place in it`. */
const workOf = ({ source }: CheckLine): string => source.split('; ')[0] ?? '';

function saidOf(lines: readonly CheckLine[], tell: (line: CheckLine) => string): string {
  const [first] = lines;
  const alike = lines.length > 1 && lines.every(({ agreement }) => agreement === first?.agreement);
  const said = lines.map((line) => (alike ? tell(line) : `${tell(line)}, ${agreed(line.agreement)}`));
  const all = alike ? `; ${agreed(first?.agreement ?? '', 'all agree')}` : '';
  return `${[...new Set(said)].join('; ')}${all}.`;
}

/** `exactly` and `to 0.001 mm` say how near two numbers are; a relation holds, and says so itself. */
function agreed(agreement: string, verb = 'agrees'): string {
  return /^(?:exactly|to )/.test(agreement) ? `${verb} ${agreement}` : agreement;
}
