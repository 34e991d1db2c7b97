/** Small drawings for sweeps: two or three loops of different shapes in lanes side by side, channels that run together. */
import type { Site } from '#plan/schema';
import { bigSite } from '../../support/big-site';

export const smallSite = (count = 2): Site => {
  const site = bigSite(count);
  return {
    ...site,
    lanes: site.lanes.slice(0, Math.max(2, count)),
    units: site.units.map((unit) => ({ ...unit, scansInTurn: false })),
    circuits: site.circuits.map((circuit) => ({ ...circuit, detect: ['car'] }))
  };
};

/** A mat of bars under the first loop. */
export const withMat = (site: Site): Site => ({
  ...site,
  steel: [
    {
      id: 's1',
      kind: 'mat',
      depth: 0.14,
      pitch: 0.2,
      barRadius: 0.005,
      outline: [
        [-1.4, -1.4],
        [1.4, -1.4],
        [1.4, 1.4],
        [-1.4, 1.4]
      ]
    }
  ]
});

export const evenly = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1));
