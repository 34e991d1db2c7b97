/**
 * Whether a fault can be seen at all: how many deviations of meters and tolerances together the faulty circuit's figures lie from
 * the sound one's, both built exactly as drawn and read without error (Mahalanobis distance). The line is drawn at five: nearer, an
 * observer who knows everything would often enough, and rightly, say that nothing is wrong. The unit's frequency is left out.
 */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { Site } from '#plan/schema';
import { meterDeviation, type Figure } from './measure';

export const LEAST_DISTANCE = 5;
const DEVIATIONS = 1.96;

/** One deviation of each input of the site's tolerances, as slips of the whole circuit. */
export const oneDeviation = (site: Site) => {
  const stated = tolerancesOf(site);
  return {
    dimensions: stated.dimensions_m / DEVIATIONS,
    pitch: stated.wirePitch_m / DEVIATIONS,
    leadIn: stated.leadInLength_m / DEVIATIONS,
    temperature: stated.temperature_C / DEVIATIONS,
    permittivity: stated.relativePermittivity / DEVIATIONS
  };
};

const nameOf = ({ testPoint, loop, quantity }: Figure): string => `${testPoint} ${loop} ${quantity}`;

/** Below which a path to ground is a finding by itself, Ω. */
const LEAK = 2e7;

/** Solves a·x = b for a symmetric positive definite a, and returns b·x. */
const squaredDistance = (a: number[][], b: readonly number[]): number => {
  const size = b.length;
  const y = [...b];
  let sum = 0;
  for (let k = 0; k < size; k++) {
    for (let j = 0; j < k; j++) {
      let value = a[k]![j]!;
      for (let i = 0; i < j; i++) value -= a[k]![i]! * a[j]![i]!;
      a[k]![j] = value / a[j]![j]!;
    }
    let own = a[k]![k]!;
    for (let i = 0; i < k; i++) own -= a[k]![i]! ** 2;
    a[k]![k] = Math.sqrt(own);
    for (let i = 0; i < k; i++) y[k]! -= a[k]![i]! * y[i]!;
    y[k]! /= a[k]![k]!;
    sum += y[k]! ** 2;
  }
  return sum;
};

/** `read`: the figures of a circuit; `shifted`: the sound circuit with each input off by one deviation. */
export const distanceOf = (
  site: Site,
  sound: readonly Figure[],
  faulty: readonly Figure[],
  shifted: readonly (readonly Figure[])[]
): number => {
  const valuesOf = (figures: readonly Figure[]) =>
    new Map(figures.map((figure) => [nameOf(figure), figure.value]));
  const [ideal, wrong] = [valuesOf(sound), valuesOf(faulty)];
  const names = [...wrong.keys()].filter((name) => ideal.has(name));
  const isLeak = (name: string): boolean => name.includes('insulation');
  if (names.some((name) => (isLeak(name) ? wrong.get(name)! < LEAK : wrong.get(name) === Infinity)))
    return Infinity;
  const counted = names.filter((name) => !isLeak(name));
  const quantityOf = new Map(sound.map((figure) => [nameOf(figure), figure.quantity]));
  const slopes = shifted
    .map(valuesOf)
    .map((values) => counted.map((name) => values.get(name)! - ideal.get(name)!));
  const covariance = counted.map((name, i) =>
    counted.map((_, j) => {
      const spread = slopes.reduce((sum, slope) => sum + slope[i]! * slope[j]!, 0);
      return i === j ? spread + meterDeviation(site, quantityOf.get(name)!, ideal.get(name)!) ** 2 : spread;
    })
  );
  return Math.sqrt(
    squaredDistance(
      covariance,
      counted.map((name) => wrong.get(name)! - ideal.get(name)!)
    )
  );
};
