import { wheelForms as proportions, type WheelForm } from '../../calculations/wheels/tooth-forms.js';

/** A form of wheel cutter as it is drawn: a word for it, and heights and thickness over module. */
export interface DrawnForm {
  readonly name: string;
  readonly addendum: number;
  readonly dedendum: number;
  readonly flankRadius: number;
  /** Thickness of the tooth at the pitch circle. */
  readonly toothThickness: number;
  readonly roundBottom: boolean;
}

/** The forms of the cutter maker's dimension table, by the full-depth figure that each is stamped with. */
export const drawnForms: Readonly<Record<WheelForm, DrawnForm>> = {
  '2.95': { ...proportions['2.95'], name: 'basic', roundBottom: false },
  '3.38': { ...proportions['3.38'], name: 'deep', roundBottom: false },
  '2.45': { ...proportions['2.45'], name: 'short', roundBottom: false },
  '3.00': { ...proportions['3.00'], name: 'round bottom', roundBottom: true },
};

/** Full depth over module. */
export const depthFactor = (form: DrawnForm): number => form.addendum + form.dedendum;
