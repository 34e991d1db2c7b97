import { describe, expect, it } from 'vitest';
import {
  addLane,
  addLoop,
  addMark,
  addProbe,
  dragLoopHandle,
  moveLanePoint,
  moveThings,
  newLane,
  newLoop,
  newMark,
  removeThings,
  rotateThings,
  setShape,
  updateLane,
  updateLoop,
  updateMark,
  updateProbe,
  updateSite,
  usualTurns,
  type Thing
} from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Shape, Site } from '#plan/schema';
import { fullSite } from './site';

const L1: Thing = { kind: 'loop', id: 'L1' };
const rectangle = (width: number, length: number): Shape => ({
  kind: 'rectangle',
  centre: [0, 0],
  width,
  length,
  rotation: 0,
  cornerCut: 0
});
const shapeOf = (site: Site, id: string) => site.loops.find((loop) => loop.id === id)?.shape;

describe('a change that cannot be', () => {
  const site = fullSite();
  const loop = site.loops[0]!;

  it.each<[string, () => Site]>([
    ['turns with a fraction', () => updateLoop(site, 'L1', { turns: 2.5 })],
    ['no turns', () => updateLoop(site, 'L1', { turns: 0 })],
    [
      'a depth that is no number',
      () => updateLoop(site, 'L1', { slot: { ...loop.slot, depth: Number.NaN } })
    ],
    ['an unknown wire', () => updateLoop(site, 'L1', { wire: 'string' })],
    ['a side out of bounds', () => setShape(site, 'L1', rectangle(1_000, 1))],
    [
      'a corner cut larger than the side',
      () => setShape(site, 'L1', { ...rectangle(2, 2), cornerCut: 1.5 } as Shape)
    ],
    ['a crossing outline', () => setShape(site, 'L1', { kind: 'polygon', points: [[0, 0], [2, 2], [2, 0], [0, 2]] })], // prettier-ignore
    ['a loop that is not there', () => updateLoop(site, 'L9', { turns: 2 })],
    ['the same value', () => updateLoop(site, 'L1', { turns: loop.turns })],
    ['a second loop with the id', () => addLoop(site, loop)],
    ['an unknown vehicle', () => updateProbe(site, 0, { vehicle: 'sledge' })],
    ['a probe that is not there', () => updateProbe(site, 7, { heading: 0 })],
    ['a probe off the plan', () => addProbe(site, { vehicle: 'car', at: [1e9, 0], heading: 0 })],
    ['a lane without length', () => addLane(site, { ...newLane(site, [[1, 1], [1, 1]]) })], // prettier-ignore
    ['a lane for an unknown vehicle', () => updateLane(site, 'lane1', { largestVehicle: 'sledge' })],
    ['a second lane with the id', () => addLane(site, site.lanes[0]!)],
    ['a lane too narrow', () => updateLane(site, 'lane1', { width: 0.1 })],
    ['a mark without points', () => updateMark(site, 'm1', { points: [] })],
    ['a second mark with the id', () => addMark(site, site.marks[0]!)],
    ['a temperature out of bounds', () => updateSite(site, { temperature_C: 400 })],
    ['no movement', () => moveThings(site, [L1], [0, 0])],
    ['movement of nothing', () => moveThings(site, [], [1, 1])],
    ['a full turn', () => rotateThings(site, [L1], 360, [3, 3])],
    [
      'a turn out of the coordinates',
      () => rotateThings(site, [{ kind: 'loop', id: 'L4' }], 90, [-19_999, 0])
    ],
    ['a handle that is not there', () => dragLoopHandle(site, 'L1', 'top', [1, 1])],
    ['a handle that stays', () => dragLoopHandle(site, 'L1', 'ne', [0.9, 0.9])],
    ['deleting what is not there', () => removeThings(site, [{ kind: 'loop', id: 'L9' }, { kind: 'probe', id: '5' }])] // prettier-ignore
  ])('leaves the same object: %s', (_, change) => {
    expect(change()).toBe(site);
  });
});

describe('changing things', () => {
  it('shares what did not change', () => {
    const site = fullSite();
    const next = updateLoop(site, 'L2', { turns: 5 });
    expect(next.loops[1]?.turns).toBe(5);
    expect(next.loops[0]).toBe(site.loops[0]);
    expect(next.circuits).toBe(site.circuits);
    expect(next.lanes).toBe(site.lanes);
    expect(site.loops[1]?.turns).toBe(3);
  });

  it('takes an optional field away', () => {
    const next = updateLane(fullSite(), 'lane1', { largestVehicle: undefined });
    expect(next.lanes[0]).not.toHaveProperty('largestVehicle');
  });

  it('keeps fields that it does not know', () => {
    const site = { ...fullSite(), surveyor: 'east side' };
    expect(moveThings(site, [L1], [1, 0])).toHaveProperty('surveyor', 'east side');
  });

  it('moves a group only as far as its first member may go', () => {
    const things: Thing[] = [L1, { kind: 'loop', id: 'L4' }, { kind: 'probe', id: '1' }];
    const next = moveThings(fullSite(), things, [50_000, 2]);
    expect(shapeOf(next, 'L4')).toMatchObject({ centre: [20_000, 2] });
    expect(shapeOf(next, 'L1')).toMatchObject({ centre: [19_988, 2] });
    expect(next.probes[1]).toMatchObject({ at: [19_992, 3] });
    expect(shapeOf(next, 'L2')).toMatchObject({ centre: [4, 0] });
  });

  it('turns everything about the pivot, vehicles with their heading', () => {
    const things: Thing[] = [
      L1,
      { kind: 'lane', id: 'lane1' },
      { kind: 'mark', id: 'm1' },
      { kind: 'probe', id: '0' }
    ];
    const next = rotateThings(fullSite(), things, 90, [0, 0]);
    expect(shapeOf(next, 'L1')).toMatchObject({ centre: [0, 0], rotation: 90 });
    expect(next.lanes[0]?.centreline).toEqual([[9, 0], [-9, 0]]); // prettier-ignore
    expect(next.marks[0]?.points).toEqual([[-5, -1], [-5, 1]]); // prettier-ignore
    expect(next.probes[0]).toMatchObject({ at: [-1, 0], heading: 180 });
  });

  it('brings a dragged point back inside the coordinates', () => {
    const next = moveLanePoint(fullSite(), 'lane1', 1, [3, 99_999]);
    expect(next.lanes[0]?.centreline).toEqual([[0, -9], [3, 20_000]]); // prettier-ignore
  });

  it('gives new things ids that are free', () => {
    const site = fullSite();
    const crowded = removeThings(site, [{ kind: 'loop', id: 'L2' }]);
    expect(newLoop(crowded, rectangle(1, 1)).id).toBe('L5');
    expect(newMark(site, 'kerb', [[0, 0], [1, 1]]).id).toBe('m2'); // prettier-ignore
    expect(newLane(site, [[0, 0], [1, 1]])).toMatchObject({ id: 'lane2', width: 3.5 }); // prettier-ignore
  });

  it('draws lanes twelve feet wide on an imperial drawing', () => {
    const site = updateSite(emptySite(), { displayUnits: 'imperial' });
    expect(newLane(site, [[0, 0], [0, 9]]).width).toBeCloseTo(3.6576, 12); // prettier-ignore
  });

  it('winds the usual turns', () => {
    // 6 × 6 ft with three turns is 72 by the rule of thumb, with two 36; 6 × 20 ft with two is 78; 2 × 2 ft with five is 60.
    expect(usualTurns(rectangle(1.8288, 1.8288))).toBe(3);
    expect(usualTurns(rectangle(1.8288, 6.096))).toBe(2);
    expect(usualTurns(rectangle(0.6096, 0.6096))).toBe(5);
    expect(usualTurns(rectangle(0.1, 0.1))).toBe(8);
  });
});

describe('deleting', () => {
  it('takes a loop out of its circuit and leaves the others wired', () => {
    const next = removeThings(fullSite(), [L1]);
    expect(next.circuits[0]?.strings).toEqual([[{ loop: 'L2', reversed: true }]]);
    expect(next.circuits).toHaveLength(2);
    expect(next.readings).toHaveLength(3);
  });

  it('takes a circuit with its last loop, and the readings of that circuit', () => {
    const site = fullSite();
    const next = removeThings(site, [{ kind: 'loop', id: 'L3' }]);
    expect(next.circuits).toEqual([site.circuits[0]]);
    expect(next.readings).toEqual([site.readings[0], site.readings[2]]);
    expect(next.units).toBe(site.units);
  });

  it('leaves the wiring alone when a loose loop or anything else goes', () => {
    const site = fullSite();
    const things: Thing[] = [
      { kind: 'loop', id: 'L4' },
      { kind: 'lane', id: 'lane1' },
      { kind: 'mark', id: 'm1' },
      { kind: 'probe', id: '0' }
    ];
    const next = removeThings(site, things);
    expect(next).toMatchObject({ lanes: [], marks: [], probes: [{ vehicle: 'car' }] });
    expect(next.circuits).toBe(site.circuits);
  });
});
