/** A site of many loops for benchmarks and end-to-end speed checks: six rows of every shape over four lanes, three units. */
import { emptySite } from '#plan/read';
import type { Circuit, Loop, Point, Shape, Site, Unit } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';

const LANES = 4;
const LANE_WIDTH = 3.5;
const ROW = 5;
const CHANNELS = 8;

const shapes: readonly ((centre: Point) => Shape)[] = [
  (centre) => ({ kind: 'rectangle', centre, width: 1.8, length: 1.8, rotation: 0, cornerCut: 0.3 }),
  (centre) => ({ kind: 'rectangle', centre, width: 1.8, length: 2.4, rotation: 5, cornerCut: 0 }),
  (centre) => ({ kind: 'quadrupole', centre, width: 1.8, length: 3, rotation: 0 }),
  (centre) => ({ kind: 'diagonal', centre, width: 1.8, length: 1.8, rotation: 0 }),
  (centre) => ({ kind: 'circle', centre, diameter: 1.8 }),
  ([x, y]) => ({
    kind: 'polygon',
    points: [
      [x - 0.9, y - 0.6],
      [x, y - 1],
      [x + 0.9, y - 0.6],
      [x + 0.9, y + 0.9],
      [x - 0.9, y + 0.9]
    ]
  })
];

export const bigSite = (count = 24): Site => {
  const places = Array.from({ length: count }, (_, k) => ({
    id: k + 1,
    centre: [(k % LANES) * LANE_WIDTH, Math.floor(k / LANES) * ROW] as const
  }));
  const loops = places.map(({ id, centre }): Loop => ({
    id: `L${id}`,
    name: `Loop ${id}`,
    turns: 3,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: { length: 4 },
    shape: shapes[(id - 1) % shapes.length]!(centre)
  }));
  const circuits = places.map(({ id }): Circuit => ({
    id: `C${id}`,
    name: `Circuit ${id}`,
    strings: [[{ loop: `L${id}`, reversed: false }]],
    leadIn: { cable: 'pair-14', length: 30 + id },
    channel: {
      unit: `U${Math.ceil(id / CHANNELS)}`,
      number: ((id - 1) % CHANNELS) + 1,
      frequencySetting: ((id - 1) % 4) + 1,
      frequency_Hz: null,
      tripThreshold: 0.001,
      releaseRatio: 0.6,
      output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
    },
    detect: ['car', 'motorcycle']
  }));
  const units = Array.from({ length: Math.ceil(count / CHANNELS) }, (_, k): Unit => ({
    id: `U${k + 1}`,
    name: `Unit ${k + 1}`,
    channels: CHANNELS,
    scansInTurn: true,
    measuringTime_s: 0.005,
    settings_F: [2.2e-7, 1.5e-7, 1e-7, 6.8e-8],
    inductanceRange_H: [2e-5, 2e-3]
  }));
  const length = Math.ceil(count / LANES) * ROW;
  return {
    ...emptySite('Bench'),
    lanes: Array.from({ length: LANES }, (_, k) => ({
      id: `lane${k + 1}`,
      name: `Lane ${k + 1}`,
      centreline: [
        [k * LANE_WIDTH, -20],
        [k * LANE_WIDTH, length + 20]
      ],
      width: LANE_WIDTH
    })),
    loops,
    circuits,
    units,
    probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
  };
};

/** The site with one loop moved. */
export const withLoopAt = (site: Site, index: number, by: Point): Site => ({
  ...site,
  loops: site.loops.map((loop, k) => (k === index ? { ...loop, shape: moved(loop.shape, by) } : loop))
});

const moved = (shape: Shape, [dx, dy]: Point): Shape =>
  shape.kind === 'polygon'
    ? { ...shape, points: shape.points.map(([x, y]) => [x + dx, y + dy] as const) }
    : { ...shape, centre: [shape.centre[0] + dx, shape.centre[1] + dy] };

/** The same with a mat of bars under every loop. */
export const withMats = (site: Site): Site => ({
  ...site,
  steel: site.loops.map(({ id, shape }) => {
    const [x, y] = centreOf(shape);
    const at = (dx: number, dy: number): Point => [x + dx, y + dy];
    return {
      id: `S${id}`,
      kind: 'mat',
      depth: 0.14,
      pitch: 0.2,
      barRadius: 0.005,
      outline: [at(-1.6, -2), at(1.6, -2), at(1.6, 2), at(-1.6, 2)]
    };
  })
});
