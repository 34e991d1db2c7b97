/** Meters on a circuit: ideal figures, and readings with the error that the catalogue states for each. */
import { accuracyOf, USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import type { Quantity, Reading, Site, TestPoint } from '#plan/schema';
import type { BuiltCircuit } from './built';
import { alternating, directCurrent, insulation, insulationBetween, oscillation } from './figures';
import type { Omission } from './planted';
import { buildRoad, type Point, type Road } from './network';
import { bestResponse } from './vehicle-over';

/** What a meter would show if it had no error; Infinity: over its range. */
export interface Figure {
  readonly testPoint: TestPoint;
  readonly loop: string | null;
  readonly quantity: Quantity;
  readonly value: number;
}

/** What hangs where: before the splices, and behind them. */
export interface Scene {
  readonly loops: BuiltCircuit;
  readonly box: BuiltCircuit;
  readonly cabinet: BuiltCircuit;
  readonly meterFrequency: number;
  readonly omits: readonly Omission[];
  readonly subject: string | null;
  readonly unitRange: readonly [number, number];
  /** Between the wires of a sound lead-in, Ω. */
  readonly between: number;
  /** Stands over the loops for ΔL/L; none over steel, whose images would be the product's as well. */
  readonly vehicle: { readonly site: Site; readonly id: string; readonly lift: number } | null;
}

/** Below which Q no oscillator runs. */
const LEAST_Q = 2;

const bridge = (road: Road, point: Point, frequency: number): Partial<Record<Quantity, number>> => {
  const { inductance, q } = alternating(road, point, frequency);
  // an inductance meter shows nothing sensible on what is no inductance
  return inductance > 0 && q > 0 ? { inductance_H: inductance, q } : { inductance_H: Infinity };
};

const listed = (
  testPoint: TestPoint,
  loop: string | null,
  values: Partial<Record<Quantity, number>>
): Figure[] =>
  Object.entries(values).map(([quantity, value]) => ({
    testPoint,
    loop,
    quantity: quantity as Quantity,
    value
  }));

/** `wanted`: at the cabinet alone, or at the pull box as well. `isQuick` leaves the unit out. */
export const figuresAt = (scene: Scene, wanted: 'full' | 'cabinet', isQuick = false): Figure[] => {
  const roads = new Map<BuiltCircuit, Road>();
  const roadOf = (circuit: BuiltCircuit): Road => {
    const road = roads.get(circuit) ?? buildRoad(circuit);
    roads.set(circuit, road);
    return road;
  };
  const at = (circuit: BuiltCircuit, point: Point): Partial<Record<Quantity, number>> => ({
    resistanceDc_ohm: directCurrent(roadOf(circuit), point),
    ...bridge(roadOf(circuit), point, scene.meterFrequency),
    insulation_ohm: insulation(circuit, point)
  });
  const figures: Figure[] = [];
  if (wanted === 'full') {
    scene.loops.loops.forEach(({ id }, loop) => {
      if (id === scene.subject && scene.omits.includes('loop of the subject')) return;
      figures.push(...listed('loop', id, at(scene.loops, { at: 'loop', loop })));
    });
    if (!scene.omits.includes('pull-box'))
      figures.push(...listed('pull-box', null, at(scene.box, { at: 'pull-box' })));
  }
  figures.push(...listed('cabinet', null, at(scene.cabinet, { at: 'cabinet' })));
  if (wanted === 'full' && !scene.omits.includes('insulation between'))
    figures.push(
      ...listed('cabinet', null, {
        insulationBetween_ohm: insulationBetween(roadOf(scene.cabinet), scene.between)
      })
    );
  if (!isQuick) figures.push(...unitFigures(roadOf(scene.cabinet), scene, wanted));
  return figures;
};

/** A unit shows a frequency as long as it can run on what hangs on it. */
const unitFigures = (road: Road, { unitRange, vehicle }: Scene, wanted: 'full' | 'cabinet'): Figure[] => {
  const frequency = oscillation(road);
  if (frequency === null) return [];
  const { inductance, q } = alternating(road, { at: 'cabinet' }, frequency);
  const runs = inductance >= unitRange[0] && inductance <= unitRange[1] && q >= LEAST_Q;
  if (!runs) return [];
  if (wanted === 'cabinet' || !vehicle) return listed('unit', null, { frequency_Hz: frequency });
  const deltaLOverL = bestResponse(vehicle.site, road, vehicle.id, 0, frequency, vehicle.lift);
  return listed('unit', null, { frequency_Hz: frequency, deltaLOverL });
};

const DEVIATIONS = 1.96;

export interface Meters {
  readonly normal: () => number;
  /** Ω, the most that the insulation tester shows. */
  readonly insulationTop: number;
}

/** One deviation of the meter, in the quantity's unit. */
export const meterDeviation = (site: Site, quantity: Quantity, value: number): number => {
  const { share, floor } = accuracyOf(site, {}, quantity);
  return (share * Math.abs(value) + floor) / DEVIATIONS;
};

/** A meter that may be off by its floor has one digit below it, no more: a tester of ±0.1 MΩ shows no ohms. */
const displayed = (site: Site, quantity: Quantity, value: number): number => {
  const step = accuracyOf(site, {}, quantity).floor / 10;
  return step > 0 ? Math.round(value / step) * step : value;
};

const isInsulation = (quantity: Quantity): boolean => quantity.startsWith('insulation');

/** Readings of one visit: one a test point. */
export const readingsOf = (
  site: Site,
  circuit: string,
  figures: readonly Figure[],
  { normal, insulationTop }: Meters
): Reading[] => {
  const places = new Map<string, { testPoint: TestPoint; loop: string | null; shown: Figure[] }>();
  for (const figure of figures) {
    const { testPoint, loop, quantity, value: ideal } = figure;
    const key = `${testPoint} ${loop}`;
    const place = places.get(key) ?? { testPoint, loop, shown: [] };
    const read = ideal === Infinity ? ideal : ideal + meterDeviation(site, quantity, ideal) * normal();
    const top = isInsulation(quantity) ? insulationTop : Infinity;
    const least = quantity === 'deltaLOverL' ? -1 : 0;
    const value = read > top ? Infinity : displayed(site, quantity, Math.max(least, read));
    place.shown.push({ ...figure, value });
    places.set(key, place);
  }
  return [...places.values()].map(({ testPoint, loop, shown }, k): Reading => {
    const over = shown.filter(({ value }) => value === Infinity).map(({ quantity }) => quantity);
    const values = shown
      .filter(({ value }) => value !== Infinity)
      .map(({ quantity, value }) => [quantity, value]);
    return {
      id: `R${k + 1}`,
      circuit,
      at: '2024-05-14T09:00:00Z',
      testPoint,
      ...(loop === null ? {} : { loop }),
      ...(Object.fromEntries(values) as Partial<Record<Quantity, number>>),
      ...(over.length > 0 ? { overRange: over } : {}),
      ...(shown.some(({ quantity }) => quantity === 'deltaLOverL') ? { vehicle: 'car' } : {})
    };
  });
};

export { USUAL_METER_FREQUENCY };
