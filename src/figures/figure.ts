import type { z } from 'zod';
import type { Extent, Marks } from './drafting/marks.js';

/** How the page wants its figures. */
export interface FigureStyle {
  /** Font size of labels, mm; 2.8 to read in the hand, 6 for large print. */
  readonly labelSize: number;
  /** The system that lengths are printed in; what is given is always mm. */
  readonly units: 'mm' | 'inch';
  /** Widest a figure may be on this page, mm. */
  readonly maxWidth: number;
}

/** A finished figure, ready to stand in a page. */
export interface Figure {
  readonly svg: string;
  /** mm */
  readonly width: number;
  /** mm */
  readonly height: number;
  /** One sentence that says what is drawn, for those who hear the page. */
  readonly label: string;
  /** `true scale`, `20 : 1`, `1 : 2` or `not to scale`; the caption prints it. */
  readonly scale: string;
}

/** A figure with the record of where its ink lies, by which a test proves that no label touches a line. */
export interface Drawing extends Figure {
  readonly marks: Marks;
  /** What is on the paper, in mm about the drawing’s own origin, to be set into a larger drawing. */
  readonly content: { readonly box: Extent; readonly elements: readonly string[] };
}

/** One kind of figure: what it needs to be given, and how it is drawn from that. */
export interface FigureDefinition<G> {
  readonly name: string;
  readonly title: string;
  readonly given: z.ZodObject<z.ZodRawShape>;
  /** @throws {InputError} when the values make no shape, or the figure cannot fit the page */
  draw(given: G, style: FigureStyle): Drawing;
}

/** Ties the type of `draw` to the schema of what it is given. */
export function defineFigure<Shape extends z.ZodRawShape>(definition: {
  readonly name: string;
  readonly title: string;
  readonly given: z.ZodObject<Shape>;
  draw(given: z.output<z.ZodObject<Shape>>, style: FigureStyle): Drawing;
}): FigureDefinition<z.output<z.ZodObject<Shape>>> {
  return definition;
}

/** A figure among others; what it is given has been checked against its own schema before it is drawn. */
export type AnyFigure = FigureDefinition<Record<string, unknown>>;
