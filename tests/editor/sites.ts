/** Small sites for gestures, all read through the same door as a user's file. */
import { readSite } from '#plan/read';
import type { Shape, Site } from '#plan/schema';

interface Parts {
  readonly shapes?: readonly Partial<Shape>[];
  readonly lanes?: readonly object[];
  readonly probes?: readonly object[];
  readonly marks?: readonly object[];
  readonly paths?: readonly object[];
  readonly units?: 'metric' | 'imperial';
}

const loopOf = (shape: Partial<Shape>, index: number) => ({
  id: `L${index + 1}`,
  name: `Loop ${index + 1}`,
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008 },
  shape
});

const circuitOf = (_: unknown, index: number) => ({
  id: `C${index + 1}`,
  strings: [[{ loop: `L${index + 1}` }]],
  leadIn: { cable: 'pair-14', length: 20 },
  channel: { unit: `U${index + 1}`, number: 1, tripThreshold: 0.001 }
});

const unitOf = (_: unknown, index: number) => ({
  id: `U${index + 1}`,
  channels: 1,
  scansInTurn: true,
  measuringTime_s: 0.005,
  settings_F: [2.2e-7, 1e-7],
  inductanceRange_H: [2e-5, 2e-3]
});

export function siteWith({
  shapes = [],
  lanes = [],
  probes = [],
  marks = [],
  paths = [],
  units = 'metric'
}: Parts): Site {
  const reading = readSite(
    JSON.stringify({
      format: 'kerfline-site',
      version: 1,
      name: 'Quarry Row',
      displayUnits: units,
      lanes,
      marks,
      paths,
      probes,
      loops: shapes.map(loopOf),
      circuits: shapes.map(circuitOf),
      units: shapes.map(unitOf)
    })
  );
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

export const square = (x: number, y: number, side = 2): Partial<Shape> => ({
  kind: 'rectangle',
  centre: [x, y],
  width: side,
  length: side
});

/** Four by six loops in rows, as on a large car park. */
export const manyLoops = (): Site =>
  siteWith({
    shapes: Array.from({ length: 24 }, (_, index) =>
      square((index % 6) * 4 - 10, Math.floor(index / 6) * 4 - 6)
    ),
    lanes: [{ id: 'lane1', centreline: [[0, -20], [0, 20]], width: 3.5 }] // prettier-ignore
  });
