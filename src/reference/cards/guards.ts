import { type Card, type CardKind, told, words } from './card.js';

const sign = (name: string) => ({ figure: 'bench-sign', given: { sign: name } });

export const guards: CardKind = {
  name: 'guards',
  title: 'Guards, emery and chuck key',
  line: 'four signs for the machines: emery, chuck key, guards, and before you start',
  conventions: ['Usual workshop practice. Local rules and a qualified instructor’s word come first.'],
  make: () => CARDS,
};

const CARDS: readonly Card[] = [
  {
    title: 'Emery: never by hand',
    loud: true,
    picture: sign('emery'),
    passages: [
      words('Why', told`The strip takes hold of turning work, and takes the hand with it.`),
      words(
        'Do',
        told`Stop the spindle, and polish by hand.`,
        told`Or hold the emery in the tool post or a holder, if your instructor allows it.`,
      ),
    ],
    caution: 'emery-cloth',
  },
  {
    title: 'Chuck key: out first',
    loud: true,
    picture: sign('chuck-key'),
    passages: [
      words('Why', told`A key that is left in is thrown when the spindle starts.`),
      words(
        'Do',
        told`The key is in your hand, or on its hook. Never let go of it in the chuck.`,
        told`Turn the chuck by hand, once round, before you start.`,
      ),
    ],
  },
  {
    title: 'Guard down',
    loud: true,
    picture: sign('guard'),
    passages: [
      words('Why', told`A cutter throws chips, and a loose tooth. It pulls in what touches it.`),
      words(
        'Do',
        told`Guard down to the work. Stand out of line with the cutter.`,
        told`Clamp, cut, draw clear. Then index.`,
        told`Hands stay well away until it has stopped.`,
      ),
    ],
    caution: 'cutter-guard',
  },
  {
    title: 'Before you start',
    loud: true,
    picture: sign('eyes'),
    passages: [
      {
        kind: 'ticks',
        lines: [
          told`Eyes covered.`,
          told`No gloves, rings or loose sleeves. Long hair tied up.`,
          told`Chuck key out. Guards in place.`,
          told`Isolate before you measure, change wheels or touch the cutter.`,
          told`Not sure? Ask the instructor.`,
        ],
      },
    ],
  },
];
