/** What ideal meters would show at a test point of a built circuit. */
import type { BuiltCircuit } from './built';
import { Net, type C } from './nodal';
import type { Point, Road } from './network';

/** Ω from which on a path counts as none. */
const NO_PATH = 1e7;

/** Infinite where nothing flows. */
export const directCurrent = (road: Road, point: Point): number => {
  const { re } = road.impedance(point, 0);
  return Math.abs(re) > NO_PATH ? Infinity : re;
};

export interface Alternating {
  /** H; negative where the terminals look capacitive. */
  readonly inductance: number;
  readonly q: number;
}

const figuresOf = ({ re, im }: C, frequency: number): Alternating => ({
  inductance: im / (2 * Math.PI * frequency),
  q: im / re
});

export const alternating = (road: Road, point: Point, frequency: number): Alternating =>
  figuresOf(road.impedance(point, frequency), frequency);

const HIGHEST = 3e6;

/**
 * Hz at which the unit's oscillator settles with its setting's capacitance on these terminals: the tank's own frequency
 * (1 − 1/8Q²)/(2π√LC). The lowest crossing, found by halving; null where there is none.
 */
export const oscillation = (road: Road): number | null => {
  const { setting } = road.circuit;
  const isBelow = (f: number): boolean => {
    const { inductance, q } = alternating(road, { at: 'cabinet' }, f);
    if (!(inductance > 0)) return false;
    return (1 - 1 / (8 * q * q)) / (2 * Math.PI * Math.sqrt(inductance * setting)) > f;
  };
  // the law means nothing at frequencies so low that there is hardly any Q
  let low = 1_000;
  while (!isBelow(low)) {
    low *= 1.3;
    if (low > HIGHEST) return null;
  }
  let high = low;
  while (isBelow(high)) {
    low = high;
    high *= 1.3;
    if (high > HIGHEST) return null;
  }
  while (high - low > 1e-8 * low) {
    const middle = (low + high) / 2;
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
  return low;
};

/** Of the wires to ground as an insulation tester reads it, Ω: both wires of the test point joined, unit off. */
export const insulation = (circuit: BuiltCircuit, point: Point): number => {
  const net = new Net();
  const wires = net.node();
  const leak = (ohms: number): void => net.resistor(wires, 0, ohms);
  if (point.at === 'loop') leak(circuit.loops[point.loop]!.leak);
  else for (const { loop } of circuit.strings.flat()) leak(circuit.loops[loop]!.leak);
  if (point.at === 'cabinet') {
    leak(circuit.leadIn.leak);
    if (circuit.splice.leak !== undefined) leak(circuit.splice.leak);
  }
  return net.impedance(wires, 0).re;
};

/** Between the lead-in's wires with its far end open, Ω: what leaks evenly, or the way through a short. */
export const insulationBetween = (road: Road, sound: number): number => {
  const through = directCurrent(road, { at: 'lead-in' });
  const net = new Net();
  const terminal = net.node();
  net.resistor(terminal, 0, sound);
  if (through !== Infinity) net.resistor(terminal, 0, through);
  return net.impedance(terminal, 0).re;
};
