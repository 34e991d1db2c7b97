/** Responses at the places of a pass: by the vehicle's compressed form, or one place after the other. */
import type { Placement } from '#physics/field/filaments';
import type { CompressedBody } from '#physics/vehicle/compressed';
import { reducedAt } from '#physics/vehicle/reduce';
import { reducedAlong } from '#physics/vehicle/reduce-along';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { responsesAt } from '../electrical/many-effects';
import { responsesOneByOne } from '../electrical/one-by-one';
import { gapBetween, type Footprint } from '../electrical/reach';
import type { Steps } from '../steps';
import { isRun, rangeOf, type Grid, type Passed } from './grid';
import { COARSER, fillBetween, STEP } from './samples';

/** Places that are made before others get their turn, of a way that is not straight. */
const A_TURN = 40;

export function* compressedSamples(
  solved: SolvedCircuit,
  compressed: CompressedBody,
  passed: readonly Passed[],
  footprint: Footprint,
  grid: Grid,
  placeAt: (along: number) => Placement
): Steps<Float64Array> {
  const samples = new Float64Array(grid.last + 1);
  const isKnown = new Uint8Array(grid.last + 1);
  const spacing = Math.round(grid.step / STEP);
  for (const { from, count, every } of grid.runs) {
    const placements = Array.from({ length: count }, (_, k) =>
      placeAt(grid.from + (from + k * every) * grid.step)
    );
    const straight = isRun(placements, every * grid.step);
    for (let start = 0; start < count; start += straight ? count : A_TURN) {
      const part = straight ? placements : placements.slice(start, start + A_TURN);
      const ranges = passed.map((each) => rangeOf(each, footprint, part));
      const reduced = (loop: number, first: number, to: number): Float64Array => {
        const { filaments } = solved.input.loops[loop]!.model;
        return straight
          ? reducedAlong(compressed, filaments, part[first]!, to - first, every * spacing)
          : reducedAt(compressed, filaments, part.slice(first, to));
      };
      const places = { count: part.length, isRun: true, ranges, rank: compressed.rank, reduced };
      responsesAt(solved, places).forEach((response, k) => {
        samples[from + (start + k) * every] = response;
        isKnown[from + (start + k) * every] = 1;
      });
      yield;
    }
  }
  fillBetween(samples, isKnown, COARSER);
  return samples;
}

export function* samplesOneByOne(
  solved: SolvedCircuit,
  body: VehicleBody,
  passed: readonly Passed[],
  footprint: Footprint,
  grid: Grid,
  placeAt: (along: number) => Placement
): Steps<Float64Array> {
  const samples = new Float64Array(grid.last + 1);
  const isKnown = new Uint8Array(grid.last + 1);
  const isNear = (placement: Placement): boolean =>
    passed.some(({ box, reach }) => gapBetween(box, footprint, placement) <= reach.own);
  for (const { from, count, every } of grid.runs) {
    const numbers = Array.from({ length: count }, (_, k) => from + k * every);
    for (const k of numbers) isKnown[k] = 1;
    const near = numbers.filter((k) => isNear(placeAt(grid.from + k * grid.step)));
    const placements = near.map((k) => placeAt(grid.from + k * grid.step));
    const responses = yield* responsesOneByOne(solved, body, placements);
    near.forEach((k, at) => {
      samples[k] = responses[at]!;
    });
  }
  fillBetween(samples, isKnown, COARSER);
  return samples;
}
