import { wheelForms as proportions, type WheelForm } from '../../calculations/tooth-forms.js';

/** A form of wheel cutter as it is drawn: a word for it, and heights and thickness over module. */
export interface DrawnForm {
  readonly name: string;
  readonly addendum: number;
  readonly dedendum: number;
  readonly flankRadius: number;
  /** Thickness of the tooth at the pitch circle. */
  readonly tooth: number;
  readonly roundBottom: boolean;
}

const half = { tooth: Math.PI / 2, roundBottom: false };

/** The forms of the cutter maker's dimension table, by the full-depth figure that each is stamped with. */
export const drawnForms: Readonly<Record<WheelForm, DrawnForm>> = {
  '2.95': { ...proportions['2.95'], ...half, name: 'basic' },
  '3.38': { ...proportions['3.38'], ...half, name: 'deep' },
  '2.45': { ...proportions['2.45'], ...half, name: 'short' },
  '3.00': { ...proportions['3.00'], tooth: 1.41, roundBottom: true, name: 'round bottom' },
};

/** In the order of the table. JavaScript keeps keys like these as they were written. */
export const formNames = Object.keys(drawnForms) as [WheelForm, ...WheelForm[]];

/** Full depth over module. */
export const depthFactor = (form: DrawnForm): number => form.addendum + form.dedendum;
