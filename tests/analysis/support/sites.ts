/** Small sites, read as a file would be: every default is the schema's, and nothing impossible slips in. */
import { readSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';

type Json = Readonly<Record<string, unknown>>;

export const siteOf = (fields: Json): Site => {
  const reading = readSite(JSON.stringify({ format: 'kerfline-site', version: 1, ...fields }));
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
};

export const square = (x: number, y: number, side = 1.8): Json => ({
  kind: 'rectangle',
  centre: [x, y],
  width: side,
  length: side
});

export const loop = (id: string, shape: Json, over: Json = {}): Json => ({
  id,
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008 },
  shape,
  ...over
});

/** One string in series on a channel of U1. */
export const circuit = (id: string, loops: readonly string[], over: Json = {}): Json => ({
  id,
  strings: [loops.map((each) => ({ loop: each }))],
  leadIn: { cable: 'pair-14', length: 30 },
  channel: channel('U1', 1),
  ...over
});

export const channel = (unit: string, number: number, over: Json = {}): Json => ({
  unit,
  number,
  frequency_Hz: 50_000,
  tripThreshold: 0.001,
  ...over
});

export const unit = (id: string, over: Json = {}): Json => ({
  id,
  channels: 16,
  scansInTurn: true,
  measuringTime_s: 0.005,
  settings_F: [2.2e-7, 1.5e-7, 1e-7, 6.8e-8],
  inductanceRange_H: [2e-5, 2e-3],
  ...over
});

export const lane = (id: string, x: number, over: Json = {}): Json => ({
  id,
  centreline: [
    [x, -20],
    [x, 20]
  ],
  width: 3.5,
  ...over
});

const ring = (y: number, height = 0.34, axis: readonly number[] = [1, 0, 0]): Json => ({
  kind: 'ring',
  centre: [0, y, height],
  radius: 0.31,
  conductorRadius: 0.008,
  axis
});
const lying = (height: number): Json => ring(0, height, [0, 0, 1]);

/** A car as in the catalogue. */
export const CAR: Json = {
  id: 'car',
  name: 'Car',
  parts: [{ kind: 'plate', centre: [0, 0], width: 1.6, length: 4.2, height: 0.45 }]
};

/**
 * In place of the large vehicles of the catalogue, by their ids: a test that is not about them need not wait until a bus
 * has been factored.
 */
export const QUICK_VEHICLES: readonly Json[] = [
  {
    id: 'car',
    name: 'Car',
    parts: [{ kind: 'plate', centre: [0, 0], width: 0.5, length: 0.8, height: 0.3 }]
  },
  { id: 'van', name: 'Delivery van', parts: [lying(0.4)] },
  { id: 'lorry', name: 'Lorry', parts: [lying(0.5), ring(0.6)] },
  { id: 'bus', name: 'Bus', parts: [lying(0.6)] },
  { id: 'motorcycle', name: 'Motorcycle', parts: [ring(0.6), ring(-0.6)] },
  { id: 'motorcycle-small', name: 'Small motorcycle', parts: [ring(0.5), ring(-0.5)] },
  { id: 'bicycle', name: 'Bicycle', parts: [ring(0.525), ring(-0.525)] }
];

/** Loops in a row along x, each on a circuit and a channel of its own. */
export const rowSite = (places: readonly Point[], over: Json = {}): Site =>
  siteOf({
    loops: places.map(([x, y], k) => loop(`L${k + 1}`, square(x, y))),
    circuits: places.map((_, k) => circuit(`C${k + 1}`, [`L${k + 1}`], { channel: channel('U1', k + 1) })),
    units: [unit('U1')],
    vehicles: QUICK_VEHICLES,
    ...over
  });
