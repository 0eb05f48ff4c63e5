import type { WheelForm } from '../../calculations/wheels/tooth-forms.js';
import type { Path } from '../../geometry/curves/path.js';
import type { Kit } from '../../kit/schema.js';
import type { CautionName } from '../../lesson/cautions.js';
import type { Desk } from '../desk.js';
import type { Table, WheelJob } from '../sheet.js';

/** How a wheel is crossed out, as far as the course says; the rest goes by the rule. */
export interface WantedCrossing {
  readonly arms?: number | undefined;
  readonly rimInsideDiameter?: number | undefined;
  readonly hubDiameter?: number | undefined;
  readonly armWidthAtRim?: number | undefined;
  readonly armWidthAtHub?: number | undefined;
  readonly filletRadius?: number | undefined;
}

/** A wheel to be cut, with what its templates are drawn from; mm. */
export interface TemplateJob extends WheelJob {
  readonly module: number;
  readonly leaves?: number | undefined;
  readonly convention: 'leaves' | '2.76';
  readonly depthForm: WheelForm;
  readonly blanks: number;
  readonly hole?: number | undefined;
  readonly arbor?: number | undefined;
  readonly crossing?: WantedCrossing | undefined;
}

/** A drawing by its name and what it is given; always at its own scale. */
export interface PieceDrawing {
  readonly figure: string;
  readonly given: Readonly<Record<string, unknown>>;
}

/** A line to be cut: a closed path about the piece’s own origin, y up, or a circle; mm. */
export type Shape =
  | Path
  | { readonly middle: { readonly x: number; readonly y: number }; readonly radius: number };

/** What a cutting machine is given: lines to cut, the inner before the outer, and lines to mark only. */
export interface Outline {
  readonly name: string;
  readonly cut: readonly Shape[];
  readonly mark: readonly Shape[];
}

/** One part of a template. */
export interface Piece {
  /** What it is for, such as the wheel’s name. */
  readonly part: string;
  /** The first that a page has room for is taken; where there is none, the last is shared out over several. */
  readonly drawings: readonly [PieceDrawing, ...PieceDrawing[]];
  /** Drawn only where it fits on one page: another piece has the same lines. */
  readonly wholeOnly?: true;
  /** How often it is wanted; as many as a page has room for are printed. */
  readonly copies?: number;
  /** A size that tells how large the piece is, in words and mm. */
  readonly over: { readonly words: string; readonly length: number };
  /** What the scale is, where it is not full size. */
  readonly scale?: string;
  /** None where another piece has the same. */
  readonly outline?: Outline;
  readonly tables: readonly Table[];
  /** How it is used. */
  readonly notes: readonly string[];
}

/** What is printed of a template. */
export interface Template {
  /** What the drawing keeps to. */
  readonly conventions: readonly string[];
  readonly cautions: readonly CautionName[];
  readonly pieces: readonly Piece[];
}

/** One of the templates that can be made. */
export interface TemplateKind {
  /** Such as `crossing`. */
  readonly name: string;
  readonly title: string;
  /** What it is for, in a line. */
  readonly line: string;
  /** What it is drawn from; none where it is the same for every workshop. */
  readonly needs?: { readonly words: string; in(kit: Kit, jobs: readonly TemplateJob[]): boolean };
  /** Its pieces, for a kit and jobs that have what it needs. */
  make(desk: Desk, kit: Kit, jobs: readonly TemplateJob[]): Template;
}
