import { readFileSync } from 'node:fs';
import Handlebars from 'handlebars';

/** The package's own folder of templates, beside `src` and beside `dist`. */
export const TEMPLATES = new URL('../../templates/', import.meta.url);

const PARTIALS = [
  'steps',
  'checks',
  'values',
  'caution',
  'name-line',
  'shown',
  'example',
  'problem-list',
  'page-list',
  'lesson-links',
  'who-columns',
  'who-heads',
  'who-blanks',
  'who-cells',
  'marks-title',
  'card-numbers',
] as const;

const handlebars = Handlebars.create();
const compiled = new Map<string, Handlebars.TemplateDelegate>();

/**
 * One of the templates of `templates/sheets`, filled. Text is escaped; only `{{{…}}}` is HTML already.
 *
 * @param view plain data
 */
export function render(name: string, view: object): string {
  if (compiled.size === 0)
    for (const partial of PARTIALS) handlebars.registerPartial(partial, compile(partial));
  return (compiled.get(name) ?? compile(name))(view);
}

function compile(name: string): Handlebars.TemplateDelegate {
  const source = readFileSync(new URL(`sheets/${name}.hbs`, TEMPLATES), 'utf8');
  const template = handlebars.compile(source, { strict: true, knownHelpersOnly: true, preventIndent: true });
  compiled.set(name, template);
  return template;
}

/** Reads the templates anew when they are next used: somebody has changed one. */
export function forgetTemplates(): void {
  compiled.clear();
}
