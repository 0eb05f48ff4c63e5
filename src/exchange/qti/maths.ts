import { markup, type Xml } from './xml.js';

/** A formula as it is set: in a wrapper of its own, with its TeX beside it. */
const SET =
  /<span class="katex[^"]*">(<math[^>]*>)<semantics>([^]*?)<annotation[^>]*>[^<]*<\/annotation><\/semantics>(<\/math>)<\/span>/g;

/** XHTML with its formulas as plain MathML: some programs would print the TeX after each as if it were text. */
export function formatted(xhtml: string): Xml {
  return markup(xhtml.replace(SET, '$1$2$3'));
}
