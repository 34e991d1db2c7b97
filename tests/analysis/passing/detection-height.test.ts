/** How high a floor may be and still make a call. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { shorterSide } from '#analysis/passing/detection-height';
import type { DetectionHeight } from '#analysis/passing/results';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const draw = (tripThreshold: number, over: Json = {}): Site =>
  siteOf({
    lanes: [lane('a', 0)],
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1, { tripThreshold }) })],
    units: [unit('U1')],
    ...over
  });
const heightOf = (site: Site): DetectionHeight =>
  createAssessor().assess(site, 'complete').detectionHeights![0]!;
const plateAt = (height: number): Json => ({
  id: 'floor',
  name: 'Floor',
  parts: [{ kind: 'plate', centre: [0, 0], width: 1.6, length: 4.2, height }]
});

describe('the height of detection', { timeout: PATIENCE }, () => {
  it.each([0.0002, 0.001, 0.01])('at a threshold of %s is where a plate just makes a call', (threshold) => {
    const { height_m, ruleOfThumb_m } = heightOf(draw(threshold, { vehicles: QUICK_VEHICLES }));
    const placed = draw(threshold, {
      vehicles: [plateAt(height_m!)],
      probes: [{ vehicle: 'floor', at: [0, 0], heading: 90 }]
    });
    const found = createAssessor().assess(placed, 'all').probes[0]!.circuits[0]!;
    // the plate's own mesh against the car's, lifted
    expect(-found.deltaLOverL / threshold).toBeGreaterThan(0.97);
    expect(-found.deltaLOverL / threshold).toBeLessThan(1.03);
    expect(ruleOfThumb_m).toBeCloseTo(1.2, 9);
  });

  it('does not hang on what a site has made of its car', () => {
    const low = { ...plateAt(0.1), id: 'car' };
    expect(heightOf(draw(0.001, { vehicles: [low, ...QUICK_VEHICLES.slice(1)] })).height_m).toBe(
      heightOf(draw(0.001, { vehicles: QUICK_VEHICLES })).height_m
    );
  });

  it('falls as the threshold rises, and is none where nothing makes a call', () => {
    const heights = [0.0005, 0.005, 0.05].map(
      (threshold) => heightOf(draw(threshold, { vehicles: QUICK_VEHICLES })).height_m!
    );
    expect(heights[0]).toBeGreaterThan(heights[1]!);
    expect(heights[1]).toBeGreaterThan(heights[2]!);
    expect(heightOf(draw(0.5, { vehicles: QUICK_VEHICLES })).height_m).toBeNull();
  });

  it('measures the shorter side in the loop, however it is turned', () => {
    const of = (shape: Json): number => shorterSide(siteOf({ loops: [loop('L1', shape)] }).loops[0]!);
    const rectangle = { kind: 'rectangle', centre: [3, 4], width: 1.5, length: 6 };
    expect(of(rectangle)).toBeCloseTo(1.5, 9);
    expect(of({ ...rectangle, rotation: 33 })).toBeCloseTo(1.5, 9);
    expect(of({ kind: 'circle', centre: [0, 0], diameter: 2 })).toBeCloseTo(2, 1);
    expect(of({ kind: 'polygon', points: [[0, 0], [3, 0], [0, 4]] })).toBeCloseTo(2.4, 9); // prettier-ignore
  });
});
