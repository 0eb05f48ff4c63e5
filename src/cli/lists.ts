import { listText } from './text.js';

/** A list as data, and as a person reads it. */
interface Listed {
  readonly entries: unknown;
  readonly text: string;
}

/** What `benchleaf list` can list; each is loaded only when it is asked for. */
export const lists = {
  async calculations(): Promise<Listed> {
    const { listCalculations } = await import('../calculations/catalogue.js');
    const entries = listCalculations();
    return { entries, text: listText(entries) };
  },
  async lessons(): Promise<Listed> {
    const { listLessons } = await import('../pack/list-lessons.js');
    const entries = listLessons();
    return {
      entries,
      text: entries
        .map(({ name, title, problems }) => `${name}: ${title} (${problems.length} problems)\n`)
        .join(''),
    };
  },
  async documents(): Promise<Listed> {
    const { kinds } = await import('../pack/kinds.js');
    const entries = Object.entries(kinds).map(([name, title]) => ({ name, title }));
    return { entries, text: entries.map(({ name, title }) => `${name}: ${title}\n`).join('') };
  },
  async sheets(): Promise<Listed> {
    const { namedKinds } = await import('../pack/named.js');
    const entries = namedKinds.flatMap(({ prefix, all }) =>
      all.map(({ name, title, line, needs }) => ({
        name: prefix + name,
        title,
        line,
        needs: needs?.words ?? 'no equipment',
      })),
    );
    return {
      entries,
      text: entries
        .map(({ name, title, line, needs }) => `${name}: ${title}; ${line}\n    needs ${needs}\n`)
        .join(''),
    };
  },
  async figures(): Promise<Listed> {
    const { figures } = await import('../figures/index.js');
    const entries = [...figures.values()].map(({ name, title, given }) => ({
      name,
      title,
      given: Object.keys(given.shape),
    }));
    return {
      entries,
      text: entries.map(({ name, title, given }) => `${name}: ${title}\n    ${given.join(', ')}\n`).join(''),
    };
  },
} satisfies Record<string, () => Promise<Listed>>;
