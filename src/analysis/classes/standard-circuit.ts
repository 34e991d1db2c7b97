/**
 * The circuit on which the vehicle classes are defined: one loop of 6 × 6 ft with corners cut 12 in, 3 turns of 14 AWG in a
 * slot 1-1/2 in deep and 1/4 in wide, behind 100 ft of 14 AWG lead-in. Turns, wire, slot and lead-in: test-loop figure
 * notes, NEMA TS 1; the size, and that the classes hold there with that lead-in (NEMA TS 1 section 15): from memory.
 * 50 kHz, 20 °C and an ordinary pavement are assumptions.
 */
import { emptySite } from '#plan/read';
import type { Circuit, Loop, Site } from '#plan/schema';
import { solveAlone } from '../electrical/alone';
import { ASSUMED_FREQUENCY, type SolvedCircuit } from '../electrical/circuit-model';

const FOOT = 0.3048;
const INCH = 0.0254;

const loop: Loop = {
  id: 'standard-loop',
  name: '',
  turns: 3,
  wire: 'awg14',
  slot: { depth: 1.5 * INCH, width: 0.25 * INCH, relativePermittivity: 4 },
  tail: { length: 0 },
  shape: {
    kind: 'rectangle',
    centre: [0, 0],
    width: 6 * FOOT,
    length: 6 * FOOT,
    rotation: 0,
    cornerCut: 12 * INCH
  }
};

const circuit: Circuit = {
  id: 'standard-circuit',
  name: '',
  strings: [[{ loop: loop.id, reversed: false }]],
  leadIn: { cable: 'pair-14', length: 100 * FOOT },
  channel: null,
  detect: []
};

export interface StandardCircuit {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly loop: Loop;
  readonly solved: SolvedCircuit;
  /** Hz */
  readonly frequency: number;
}

export const standardCircuit = (): StandardCircuit => {
  const site: Site = { ...emptySite(), temperature_C: 20, loops: [loop], circuits: [circuit] };
  const { solved } = solveAlone(site, circuit)!;
  return { site, circuit, loop, solved, frequency: ASSUMED_FREQUENCY };
};
