import { shopCards } from '../reference/cards/index.js';
import { referenceSheets } from '../reference/index.js';
import { templates } from '../reference/templates/index.js';

/** What is made by its own name, such as `sheet:simple-indexing`, and how it is spoken of. */
export const namedKinds = [
  { prefix: 'sheet:', kind: 'sheets', all: referenceSheets, title: 'Reference sheets', none: 'is no sheet' },
  { prefix: 'template:', kind: 'templates', all: templates, title: 'Templates', none: 'is no template' },
  { prefix: 'card:', kind: 'cards', all: shopCards, title: 'Shop cards', none: 'are no cards' },
] as const;
