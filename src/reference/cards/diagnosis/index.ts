import { type Card, type CardKind, steps, told, words } from '../card.js';
import { alignment } from './alignment.js';
import { cutting } from './cutting.js';
import { dividing } from './dividing.js';
import { mounting } from './mounting.js';
import { plates } from './plates.js';
import { type Shop, type Symptom, shopFor, wheelSaid } from './shop.js';

export const diagnosis: CardKind = {
  name: 'diagnosis',
  title: 'Diagnosis cards',
  line: 'a card for each symptom: the picture, the cause, the number, and what to do',
  conventions: [
    'Pictures: the wheel cut in numbers with one thing wrong, larger than life, over the right teeth in dashes. Fat and thin may change places.',
    'Bent teeth, burrs and chatter have no picture: they come out otherwise each time, and a drawing would be made up.',
    'Lengths on the wheel are along the pitch circle. Numbers are for the wheel that the card names, on the first head of the kit.',
    'Limits of what is seen and felt, and the order in which to look: common practice, no source.',
  ],
  make: (desk, kit, jobs) => {
    const shop = shopFor(desk, kit, jobs);
    const symptoms = [dividing, plates, alignment, cutting, mounting].flatMap((some) => some(shop));
    return [WHERE_TO_LOOK, ...symptoms.map((symptom) => cardOf(symptom, shop))];
  },
};

/** What to look at, in turn: the first that is wrong names the card. */
const WHERE_TO_LOOK: Card = {
  title: 'Where to look first',
  passages: [
    steps(
      told`Count the teeth.`,
      told`The closing tooth, against the others.`,
      told`Each tooth, against the next.`,
      told`The lean: sight along a space to the axis.`,
      told`The tips, all the way round.`,
      told`The roots, from face to face.`,
      told`Then the pair: round, flat, and the shake.`,
    ),
    words('Pictures', told`Thick lines: as it was cut. Dashes: as it should be.`),
  ],
  caution: 'isolate-first',
  loud: true,
};

function cardOf(symptom: Symptom, { job }: Shop): Card {
  const { title, about, picture, signs, cause, numbers, prove, mend, caution } = symptom;
  return {
    title,
    ...(numbers ? { about: about ?? wheelSaid(job.teeth, job.module), numbers } : {}),
    ...(picture ? { picture } : { loud: true }),
    passages: [
      ...(signs ? [words('It shows', signs)] : []),
      words('Cause', cause),
      ...(prove ? [words('Prove it', prove)] : []),
      words('Do', mend),
    ],
    caution,
  };
}
