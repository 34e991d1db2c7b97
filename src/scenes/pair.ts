/** Two circuits that a person looks at together: their loops outlined, and a line between them with the verdict. */
import type { BeatVerdict } from '#analysis/results';
import type { Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { loopsIn } from '#plan/wiring';
import { boxAround, boxCentre } from '#editor/geometry/box';
import { line, type Drawing, type Stroke } from './drawing';
import { onScreen, type Frame } from './frame';
import type { Theme } from './theme';

/** A sign of its own for each verdict, since colour alone says nothing to many people. */
export const VERDICT_SIGNS: Readonly<Record<BeatVerdict, string>> = {
  clear: '✓',
  watch: '◆',
  'false calls likely': '▲'
};

const COLOURS = {
  clear: 'call',
  watch: 'caution',
  'false calls likely': 'problem'
} as const satisfies Record<BeatVerdict, keyof Theme>;

const DASHES: Readonly<Record<BeatVerdict, readonly number[]>> = {
  clear: [2, 4],
  watch: [9, 5],
  'false calls likely': []
};

/** Radius of the disc that the sign stands on, pixels. */
const DISC = 11;

function outlinesOf({ loops, circuits }: Site, id: string): (readonly Point[])[] {
  const circuit = circuits.find((each) => each.id === id);
  const members = new Set(circuit ? loopsIn(circuit) : []);
  return loops.filter((loop) => members.has(loop.id)).map(({ shape }) => outlineOf(shape));
}

/** A circuit without loops on the plan is left out, and the line with it. */
export function pairScene({ site, state, theme, pointed }: Frame): Drawing[] {
  if (!pointed) return [];
  const { a, b, verdict } = pointed;
  const dash = DASHES[verdict];
  const colour = theme[COLOURS[verdict]];
  const stroke = (width: number): Stroke => ({ colour, width, ...(dash.length > 0 ? { dash } : {}) });
  const sides = [a, b].map((id) => outlinesOf(site, id).map((outline) => onScreen(state.viewport, outline)));
  const outlines = sides.flat().map((points): Drawing => ({
    kind: 'line',
    points,
    closed: true,
    stroke: stroke(3.5)
  }));
  const [from, to] = sides.map((side) => boxAround(side.flat()));
  if (!from || !to) return outlines;
  const [start, end] = [boxCentre(from), boxCentre(to)];
  const at = boxCentre(boxAround([start, end])!);
  return [
    ...outlines,
    line([start, end], stroke(2.5)),
    { kind: 'circle', at, radius: DISC, fill: theme.paper, stroke: { colour, width: 2 } },
    { kind: 'text', at, text: VERDICT_SIGNS[verdict], colour, size: 13, bold: true, align: 'center' }
  ];
}
