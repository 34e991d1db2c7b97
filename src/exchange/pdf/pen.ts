/** Writes drawings on the page of a PDF that is open. Lengths in millimetres, y downwards. */
import { GState, type jsPDF } from 'jspdf';
import type { Point } from '#plan/schema';
import type { CircleDrawing, Drawing, LineDrawing, RingsDrawing, Stroke, TextDrawing } from '#scenes/drawing';
import { twistedPair } from '#scenes/twist';
import { tintOf } from './colour';
import type { Face, FaceName } from './typeface';

/** Points of 1/72 inch in a millimetre. */
const POINTS = 72 / 25.4;
/** From the middle of a line of text down to its baseline, as a share of the type's size: half the height of capitals. */
const MIDDLE_TO_BASELINE = 0.35;
/** Round a text, to the edge of the plate behind it, as a share of the type's size. */
const PLATE = { beside: 0.3, above: 0.72 } as const;

export class Pen {
  readonly #file: jsPDF;
  readonly #faces: Readonly<Record<FaceName, Face>>;

  constructor(file: jsPDF, faces: Readonly<Record<FaceName, Face>>) {
    this.#file = file;
    this.#faces = faces;
  }

  draw(drawing: Drawing): void {
    switch (drawing.kind) {
      case 'line':
        return this.#line(drawing);
      case 'rings':
        return this.#rings(drawing);
      case 'circle':
        return this.#circle(drawing);
      case 'text':
        return this.#text(drawing);
      // a picture that is decoded has no file any more that could be put in; what lies under the plan is not on paper
      case 'image':
        return;
    }
  }

  #line({ points, closed = false, fill, stroke }: LineDrawing): void {
    if (points.length < 2) return;
    if (stroke?.twisted) for (const wire of twistedPair(points)) this.#trace(wire, closed);
    else this.#trace(points, closed);
    this.#finish(fill, stroke);
  }

  #rings({ rings, fill, stroke }: RingsDrawing): void {
    const drawn = rings.filter((ring) => ring.length > 1);
    if (drawn.length === 0) return;
    for (const ring of drawn) this.#trace(ring, true);
    this.#finish(fill, stroke);
  }

  #circle({ at, radius, fill, stroke }: CircleDrawing): void {
    if (radius <= 0 || (fill === undefined && !stroke)) return;
    this.#prepare(fill, stroke);
    const style = fill === undefined ? 'S' : stroke ? 'FD' : 'F';
    this.#file.circle(at[0], at[1], radius, style);
  }

  #text({ at: [x, y], text, size, bold, align, colour, plate }: TextDrawing): void {
    const face = this.#faces[bold ? 'bold' : 'regular'];
    const shown = face.writable(text);
    if (shown.trim() === '') return;
    this.#file.setFont(face.name, 'normal').setFontSize(size * POINTS);
    const width = this.#file.getTextWidth(shown);
    const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
    if (plate !== undefined) {
      this.#prepare(plate, undefined);
      const { beside, above } = PLATE;
      this.#file.rect(
        left - beside * size,
        y - above * size,
        width + 2 * beside * size,
        2 * above * size,
        'F'
      );
    }
    const tint = tintOf(colour);
    this.#opacities(tint.opacity, 1);
    this.#file.setTextColor(tint.colour).text(shown, left, y + MIDDLE_TO_BASELINE * size);
  }

  #trace(points: readonly Point[], closed: boolean): void {
    points.forEach(([x, y], index) => {
      if (index === 0) this.#file.moveTo(x, y);
      else this.#file.lineTo(x, y);
    });
    if (closed) this.#file.close();
  }

  /** Paints the way that was traced. */
  #finish(fill: string | undefined, stroke: Stroke | undefined): void {
    this.#prepare(fill, stroke);
    if (fill !== undefined && stroke) this.#file.fillStroke();
    else if (fill !== undefined) this.#file.fill();
    else if (stroke) this.#file.stroke();
    else this.#file.discardPath();
  }

  #prepare(fill: string | undefined, stroke: Stroke | undefined): void {
    const inside = fill === undefined ? null : tintOf(fill);
    const edge = stroke ? tintOf(stroke.colour) : null;
    this.#opacities(inside?.opacity ?? 1, edge?.opacity ?? 1);
    if (inside) this.#file.setFillColor(inside.colour);
    if (!stroke || !edge) return;
    this.#file
      .setDrawColor(edge.colour)
      .setLineWidth(stroke.width)
      .setLineDashPattern([...(stroke.dash ?? [])], 0);
  }

  /** Equal ones are written once. */
  #opacities(fill: number, stroke: number): void {
    this.#file.setGState(new GState({ opacity: fill, 'stroke-opacity': stroke }));
  }
}
