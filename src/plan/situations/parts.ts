/**
 * Usual pieces of a layout, so that a situation says only where things lie. The figures are common practice: a slot of
 * 50 × 8 mm, three turns of 14 AWG, the catalogue's usual unit.
 */
import { unitLike, usualUnit } from '../catalogue/units';
import type { Channel, Circuit, Lane, Loop, Mark, MarkKind, Point, Shape, Unit } from '../schema';

export const laneAlong = (
  id: string,
  name: string,
  x: number,
  from: number,
  to: number,
  width = 3.5
): Lane => ({
  id,
  name,
  centreline: [
    [x, from],
    [x, to]
  ],
  width,
  largestVehicle: 'lorry'
});

/** Rectangle with corner cuts of 15 cm, which spare the wire a sharp bend. */
export const rectangleAt = (x: number, y: number, width: number, length: number): Shape => ({
  kind: 'rectangle',
  centre: [x, y],
  width,
  length,
  rotation: 0,
  cornerCut: 0.15
});

export const loopOf = (id: string, name: string, shape: Shape, tail: number, turns = 3): Loop => ({
  id,
  name,
  turns,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
  tail: { length: tail },
  shape
});

/** The loop with its tail drawn to a pull box, through points on the way; a metre of it is slack and depth. */
export const ledOut = (loop: Loop, to: string, via: readonly Point[] = []): Loop => ({
  ...loop,
  tail: { ...loop.tail, route: { to, via, allowance: 1 } }
});

/** The circuit with its lead-in drawn between two marks; two metres of it are slack. */
export const ledIn = (circuit: Circuit, from: string, to: string, via: readonly Point[]): Circuit => ({
  ...circuit,
  leadIn: { ...circuit.leadIn, route: { from, to, via, allowance: 2 } }
});

export const markOf = (id: string, kind: MarkKind, points: readonly Point[], text?: string): Mark => ({
  id,
  kind,
  points,
  ...(text === undefined ? {} : { text })
});

export const unitOf = (id: string, name: string, channels: number): Unit => ({
  ...unitLike(usualUnit, { id, name }),
  channels
});

export const channelOf = (
  unit: string,
  number: number,
  frequencySetting: number,
  tripThreshold: number,
  output: Partial<Channel['output']> = {}
): Channel => ({
  unit,
  number,
  frequencySetting,
  frequency_Hz: null,
  tripThreshold,
  releaseRatio: 0.6,
  output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null, ...output }
});

/** A circuit of loops in series, in the order given. */
export const seriesOf = (
  id: string,
  name: string,
  loops: readonly string[],
  leadIn: number,
  channel: Channel,
  detect: readonly string[]
): Circuit => ({
  id,
  name,
  strings: [loops.map((loop) => ({ loop, reversed: false }))],
  leadIn: { cable: 'pair-14', length: leadIn },
  channel,
  detect
});
