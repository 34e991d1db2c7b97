/** Over steel a quick mesh says by what share a response changes: against fine meshes made for the purpose. */
import { describe, expect, it } from 'vitest';
import { createBodyStore } from '#analysis/electrical/bodies';
import { solveAlone } from '#analysis/electrical/alone';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { built } from '#analysis/tolerance/disturb';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Vehicle } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { siteWith, studyOf } from './study';

const site = siteWith({
  steel: [
    {
      id: 's1',
      kind: 'mat',
      depth: 0.15,
      pitch: 0.15,
      barRadius: 0.006,
      outline: [
        [-3, -3],
        [3, -3],
        [3, 3],
        [-3, 3]
      ]
    }
  ]
});

const liftedBy = (vehicle: Vehicle, by: number): Vehicle => ({
  ...vehicle,
  parts: vehicle.parts.map((part) =>
    part.kind === 'plate'
      ? { ...part, height: part.height + by }
      : { ...part, centre: [part.centre[0], part.centre[1], part.centre[2] + by] as const }
  )
});

/** A little more than what the quick mesh is found to miss by, of a half width. */
const QUICK = 0.1;

describe('the range of a response over a mat', { timeout: PATIENCE }, () => {
  const study = studyOf(site, ['car', 'motorcycle']);
  const bodies = createBodyStore();

  it.each(['car', 'motorcycle'])('has the half widths of fine meshes: %s', (id) => {
    const { worstAt, worstHeading } = study.responses.find(({ vehicle }) => vehicle === id)!;
    const placement = { x: worstAt[0], y: worstAt[1], heading: worstHeading };
    const { contributions } = study.ranges.responses.find(({ vehicle }) => vehicle === id)!.worst;
    const half = (input: string): number => contributions.find((each) => each.input === input)!.halfWidth;
    const vehicle = vehicleOf(id, site)!;

    const lifted = (by: number): number =>
      vehicleEffect(study.alone.solved, bodies.get(liftedBy(vehicle, by)), placement);
    expect(relativeError(half('vehicleHeight'), Math.abs(lifted(0.05) - lifted(-0.05)) / 2)).toBeLessThan(
      QUICK
    );

    const deeper = (by: number): number => {
      const other = built(site, study.circuit, { depth: by });
      return vehicleEffect(solveAlone(other.site, other.circuit)!.solved, bodies.get(vehicle), placement);
    };
    expect(relativeError(half('depth'), Math.abs(deeper(0.01) - deeper(-0.01)) / 2)).toBeLessThan(QUICK);
  });

  it('is centred on what the fine mesh says', () => {
    for (const { vehicle, worst } of study.responses) {
      const range = study.ranges.responses.find((each) => each.vehicle === vehicle)!.worst;
      expect(worst).toBeGreaterThan(range.low);
      expect(worst).toBeLessThan(range.high);
    }
  });

  it('of the inductance counts the depth, on which the nearness of the steel hangs', () => {
    const bare = studyOf(siteWith());
    const of = ({ ranges }: typeof bare): number =>
      ranges.inductance_H.contributions.find(({ input }) => input === 'depth')?.halfWidth ?? 0;
    expect(of(study)).toBeGreaterThan(100 * of(bare));
  });
});
