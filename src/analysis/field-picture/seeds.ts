/**
 * Where field lines begin. On a section: on the level of the wires, where the field goes one way through the road, so that
 * between neighbouring lines there passes the same flux in each metre across the section. Every line round a wire passes
 * there once. In the plane of symmetry of a long loop, where nothing changes across, equal flux passes between the lines
 * all along; elsewhere the lines spread into depth too, and their distance says less than the strength does. On a plan:
 * on the wires, as seen from above, evenly by the strength of the field's level part; where no wire is in sight, where the
 * field comes in over the border, or goes out, whichever is more.
 */
import { meanHeight } from '#physics/inductance/winding';
import type { Point } from '#plan/schema';
import { seenFrom, type Frame } from './frame';
import type { SourceLoop } from './source';
import { wireCuts } from './wire-cuts';

const SAMPLES = 480;

/**
 * Where equal parts of the flux begin: as many places as asked for, each as the number of a cell and the share of that cell
 * before it. None where there is no flux.
 */
export const evenPlaces = (flux: readonly number[], count: number): number[] => {
  const all = flux.reduce((sum, value) => sum + value, 0);
  if (!(all > 0)) return [];
  const places: number[] = [];
  let before = 0;
  flux.forEach((value, k) => {
    while (places.length < count) {
      const wanted = ((places.length + 0.5) * all) / count;
      if (!(value > 0) || wanted > before + value) break;
      places.push(k + Math.min(1 - 1e-9, (wanted - before) / value));
    }
    before += value;
  });
  return places;
};

/** The height that most of the current flows at. */
const levelOf = (loops: readonly SourceLoop[]): number => {
  let [sum, weight] = [0, 0];
  for (const { model, current } of loops)
    for (const run of model.winding.runs) {
      const share = Math.abs(current) * run.heights.length;
      sum += share * meanHeight(run);
      weight += share;
    }
  return weight > 0 ? sum / weight : 0;
};

const middles = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, k) => from + ((to - from) * (k + 0.5)) / count);

/** Close to a wire the field falls with the distance: there the cells grow with it, each by so much. */
const GROWTH = 1.15;
const NEAREST = 5e-4;
const LARGEST = 0.02;

/** Cells on the level of the wires, or as near to it as the picture goes: where they end, from left to right. */
export const rowOnSection = (
  loops: readonly SourceLoop[],
  frame: Frame
): { readonly ends: readonly number[]; readonly v: number } => {
  const { left, right, low, high } = frame;
  const even = Array.from({ length: SAMPLES + 1 }, (_, k) => left + ((right - left) * k) / SAMPLES);
  const beside: number[] = [];
  for (let away = NEAREST; away * (GROWTH - 1) < LARGEST; away *= GROWTH) beside.push(away, -away);
  const wires = new Set(wireCuts(loops, frame).map(({ u }) => u));
  const near = [...wires].flatMap((u) => [u, ...beside.map((away) => u + away)]);
  const ends = [...even, ...near.filter((u) => u > left && u < right)].sort((a, b) => a - b);
  return { ends, v: Math.min(high, Math.max(low, levelOf(loops))) };
};

/** Along every wire within the picture, all as far apart. */
export const placesOnPlan = (loops: readonly SourceLoop[], frame: Frame): Point[] => {
  const runs = loops.filter(({ current }) => current !== 0).flatMap(({ model }) => model.winding.runs);
  const lengthOf = (run: (typeof runs)[number]): number =>
    run.kind === 'straight' ? run.length : 2 * Math.PI * run.radius;
  const all = runs.reduce((sum, run) => sum + lengthOf(run), 0);
  const places = runs.flatMap((run): Point[] => {
    const count = Math.max(1, Math.round((SAMPLES * lengthOf(run)) / all));
    return middles(0, lengthOf(run), count).map((along): Point => {
      if (run.kind === 'straight') return [run.x + along * run.ux, run.y + along * run.uy];
      const angle = along / run.radius;
      return [run.x + run.radius * Math.cos(angle), run.y + run.radius * Math.sin(angle)];
    });
  });
  const seen = places
    .map(([x, y]): Point => {
      const [u, v] = seenFrom(frame, [x, y, 0]);
      return [u, v];
    })
    .filter(([u, v]) => u >= frame.left && u <= frame.right && v >= frame.low && v <= frame.high);
  // two cells may share a slot
  return [...new Map(seen.map((each) => [each.map((value) => value.toFixed(6)).join(), each])).values()];
};

/** All round the border, each place with the direction inwards. */
export const placesOnBorder = ({
  left,
  right,
  low,
  high
}: Frame): readonly { readonly place: Point; readonly inwards: Point }[] => [
  ...middles(left, right, SAMPLES / 4).flatMap((u) => [
    { place: [u, low] as const, inwards: [0, 1] as const },
    { place: [u, high] as const, inwards: [0, -1] as const }
  ]),
  ...middles(low, high, SAMPLES / 4).flatMap((v) => [
    { place: [left, v] as const, inwards: [1, 0] as const },
    { place: [right, v] as const, inwards: [-1, 0] as const }
  ])
];
