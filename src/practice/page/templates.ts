import Handlebars from 'handlebars/runtime';
import type { Templates } from '../../sheets/fill.js';
import { helpers } from '../../sheets/helpers.js';

declare global {
  /** The texts of the lesson’s problems as templates, which the page was made with. */
  var benchleafTemplates: Readonly<Record<string, TemplateSpecification>>;
}

const handlebars = Handlebars.create();
for (const [name, helper] of Object.entries(helpers)) handlebars.registerHelper(name, helper);
const made = new Map<string, ReturnType<Templates>>();

/** Templates of texts that were made ready with the page. */
export const readyTemplates: Templates = (text) => {
  const known = made.get(text);
  if (known) return known;
  const ready = globalThis.benchleafTemplates[text];
  if (!ready) throw new Error(`the page was made without a template of ${text}`);
  const template = handlebars.template(ready);
  made.set(text, template);
  return template;
};
