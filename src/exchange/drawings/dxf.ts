/** The plan as DXF, from its geometry: real units, a layer for each kind of thing, true circles and closed polylines. */
import { DxfWriter, LWPolylineFlags, point2d, point3d, TextHorizontalAlignment, TextVerticalAlignment, Units } from '@tarikjabiri/dxf'; // prettier-ignore
import type { DisplayUnits, Point } from '#plan/schema';
import { PLAN_KINDS, type PlanKind, type PlanThing } from '#scenes/plan-geometry';
import { FOOT } from '#units/constants';
import { breathe, type Job } from '../job';
import { dxfText } from './dxf-text';

/** Plain letters in every language: whoever loads a file tells its layers apart by them. Numbers of the format's colours. */
const LAYERS: Readonly<Record<PlanKind, { readonly name: string; readonly colour: number }>> = {
  lanes: { name: 'LANES', colour: 8 },
  'lane-centres': { name: 'LANE-CENTRES', colour: 9 },
  marks: { name: 'KERBS-AND-MARKS', colour: 8 },
  'saw-cut': { name: 'SAW-CUT', colour: 1 },
  'home-run': { name: 'HOME-RUN', colour: 30 },
  'lead-in': { name: 'LEAD-IN', colour: 5 },
  conduits: { name: 'CONDUITS', colour: 4 },
  steel: { name: 'STEEL', colour: 34 },
  boxes: { name: 'CABINET-AND-BOXES', colour: 6 },
  dimensions: { name: 'DIMENSIONS', colour: 3 },
  text: { name: 'TEXT', colour: 7 }
};

/** `$INSUNITS` and `$MEASUREMENT` of the format, and how many of the unit a metre has. */
const UNITS = {
  metric: { unit: Units.Meters, measurement: 1, perMetre: 1 },
  imperial: { unit: Units.Feet, measurement: 0, perMetre: 1 / FOOT }
} as const satisfies Readonly<Record<DisplayUnits, unknown>>;

/** How a point is shown: a circle with a cross through it, so many metres large. */
const POINT_LOOK = { mode: 34, size: 0.4 } as const;
/** Millionths of a unit: finer than anything is measured, and never written with an exponent. */
const FINENESS = 1e6;
/** From one line of a text to the next, as a share of its size. */
const LINE_HEIGHT = 1.6;
/** Things between two rests. */
const AT_ONCE = 500;

const rounded = (value: number): number => Math.round(value * FINENESS) / FINENESS || 0;

class Draughtsman {
  readonly writer = new DxfWriter();
  readonly #perMetre: number;
  #least: Point = [Infinity, Infinity];
  #most: Point = [-Infinity, -Infinity];

  constructor(units: DisplayUnits) {
    const { unit, measurement, perMetre } = UNITS[units];
    this.#perMetre = perMetre;
    this.writer.setVariable('$LASTSAVEDBY', { 1: 'Kerfline' });
    this.writer.setUnits(unit);
    this.writer.setVariable('$MEASUREMENT', { 70: measurement });
    // plain numbers with decimals, as they are in the file
    this.writer.setVariable('$LUNITS', { 70: 2 });
    this.writer.setVariable('$PDMODE', { 70: POINT_LOOK.mode });
    this.writer.setVariable('$PDSIZE', { 40: this.#length(POINT_LOOK.size) });
    for (const kind of PLAN_KINDS) this.writer.addLayer(LAYERS[kind].name, LAYERS[kind].colour);
  }

  draw({ of, figure }: PlanThing): void {
    const on = { layerName: LAYERS[of].name };
    switch (figure.kind) {
      case 'way': {
        const vertices = figure.points.map((point) => {
          const [x, y] = this.#place(point);
          return { point: point2d(x, y) };
        });
        const flags = figure.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
        if (vertices.length > 1) this.writer.modelSpace.addLWPolyline(vertices, { ...on, flags });
        return;
      }
      case 'circle': {
        const { at, radius } = figure;
        this.#reach([at[0] - radius, at[1] - radius]);
        this.#reach([at[0] + radius, at[1] + radius]);
        const [x, y] = this.#scaled(at);
        this.writer.modelSpace.addCircle(point3d(x, y), this.#length(radius), on);
        return;
      }
      case 'place': {
        const [x, y] = this.#place(figure.at);
        this.writer.modelSpace.addPoint(x, y, 0, on);
        return;
      }
      case 'text':
        this.#text(figure, on);
    }
  }

  finished(): string {
    const isEmpty = this.#least[0] > this.#most[0];
    const [left, bottom] = isEmpty ? [0, 0] : this.#scaled(this.#least);
    const [right, top] = isEmpty ? [0, 0] : this.#scaled(this.#most);
    this.writer.setVariable('$EXTMIN', { 10: left, 20: bottom, 30: 0 });
    this.writer.setVariable('$EXTMAX', { 10: right, 20: top, 30: 0 });
    return this.writer.stringify();
  }

  /** A text a line: not every reader breaks one. Only the first has a place of the plan's. */
  #text(
    { at, lines, size, align }: Extract<PlanThing['figure'], { kind: 'text' }>,
    on: { layerName: string }
  ): void {
    this.#reach(at);
    lines.map(dxfText).forEach((words, line) => {
      if (words === '') return;
      const [x, y] = this.#scaled([at[0], at[1] - line * LINE_HEIGHT * size]);
      this.writer.modelSpace.addText(point3d(x, y), this.#length(size), words, {
        ...on,
        horizontalAlignment: align === 'left' ? TextHorizontalAlignment.Left : TextHorizontalAlignment.Center,
        verticalAlignment: TextVerticalAlignment.Middle,
        secondAlignmentPoint: point3d(x, y)
      });
    });
  }

  #place(point: Point): Point {
    this.#reach(point);
    return this.#scaled(point);
  }

  #reach([x, y]: Point): void {
    this.#least = [Math.min(this.#least[0], x), Math.min(this.#least[1], y)];
    this.#most = [Math.max(this.#most[0], x), Math.max(this.#most[1], y)];
  }

  #scaled([x, y]: Point): Point {
    return [this.#length(x), this.#length(y)];
  }

  #length(metres: number): number {
    return rounded(metres * this.#perMetre);
  }
}

/** In metres or feet, by the units shown. Rejects with the signal's reason for a job that was ended. */
export async function dxfOf(things: readonly PlanThing[], units: DisplayUnits, job: Job): Promise<string> {
  const draughtsman = new Draughtsman(units);
  for (const [index, thing] of things.entries()) {
    if (index % AT_ONCE === 0) await breathe(job, index / things.length);
    draughtsman.draw(thing);
  }
  const file = draughtsman.finished();
  await breathe(job, 1);
  return file;
}
