import Handlebars from 'handlebars';
import type { Templates } from './fill.js';
import { helpers } from './helpers.js';

const handlebars = Handlebars.create();
for (const [name, helper] of Object.entries(helpers)) handlebars.registerHelper(name, helper);
const KNOWN = Object.fromEntries(Object.keys(helpers).map((name) => [name, true]));
/** Of Handlebars' own only `if` and `unless` are for lessons. */
const REFUSED = { each: false, with: false, log: false, lookup: false };
const OPTIONS = {
  noEscape: true, // Markdown comes after this, and escapes
  knownHelpersOnly: true,
  knownHelpers: { ...KNOWN, ...REFUSED } as unknown as CompileOptions['knownHelpers'] & object,
};

/** Lessons and problems have a few hundred texts; a shop full of courses may have more. */
const MOST_KEPT = 2000;
const kept = new Map<string, Handlebars.TemplateDelegate>();

/** Templates that are made when they are first wanted. */
export const textTemplates: Templates = (text) => {
  const known = kept.get(text);
  if (known) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const template = handlebars.compile(treeOf(text), OPTIONS);
  kept.set(text, template);
  return template;
};

/** A template as the source of a JavaScript object, for a page that may not make functions of texts. */
export function precompiled(text: string): string {
  return String(handlebars.precompile(treeOf(text), OPTIONS));
}

function treeOf(text: string): hbs.AST.Program {
  const tree = handlebars.parse(text);
  new ShowBareNames().accept(tree);
  return tree;
}

/** `{{teeth}}` becomes `{{shown teeth}}`, so that a count, a word, true and false all print as a reader expects. */
class ShowBareNames extends Handlebars.Visitor {
  override MustacheStatement(statement: hbs.AST.MustacheStatement): void {
    const { path, params, loc } = statement;
    if (
      path.type !== 'PathExpression' ||
      params.length > 0 ||
      Object.hasOwn(KNOWN, (path as hbs.AST.PathExpression).original)
    )
      return;
    statement.params = [path];
    statement.path = {
      type: 'PathExpression',
      data: false,
      depth: 0,
      parts: ['shown'],
      original: 'shown',
      loc,
    } as hbs.AST.PathExpression;
  }
}
