type Child = Node | string | undefined;

/** What an element is given: properties, and attributes that have none, such as `aria-live`. */
type Given = Readonly<Record<string, string | number | boolean | undefined>>;

/** A new element with attributes and children; what is undefined or false is left out. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  given: Given = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(given))
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : String(value));
  made.append(...children.filter((child) => child !== undefined));
  return made;
}

/** An element whose content is HTML that the program itself made. */
export function withHtml<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  given: Given,
  html: string,
): HTMLElementTagNameMap[K] {
  const made = element(tag, given);
  made.innerHTML = html;
  return made;
}

/** The element of the page with an id. */
export function byId<T extends HTMLElement>(id: string, kind: new () => T): T {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${id}`);
}

/** Words for those who hear the page, and know it by its parts alone. */
export const heard = (words: string): HTMLElement => element('span', { class: 'heard' }, words);

export function onClick(button: HTMLButtonElement, act: () => void): HTMLButtonElement {
  button.addEventListener('click', act);
  return button;
}
