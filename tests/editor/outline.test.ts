import { describe, expect, it } from 'vitest';
import { outlineOf } from '#editor/outline';
import { siteWith, square } from './sites';

const LANES = [
  { id: 'right', name: 'Right', centreline: [[4, 8], [4, -8]], width: 3.5 },
  { id: 'left', name: 'Left', centreline: [[0, -8], [0, 8]], width: 3.5 }
]; // prettier-ignore

describe('outline', () => {
  const site = siteWith({
    lanes: LANES,
    shapes: [square(0, 5), square(4, 0), square(0, -5), square(20, 20), square(4, 4)],
    marks: [{ id: 'm1', kind: 'stop-line', points: [[-1.7, 7], [1.7, 7]] }], // prettier-ignore
    probes: [{ vehicle: 'car', at: [0, -3] }]
  });

  it('reads lane by lane from left to right, loops in the direction of travel', () => {
    expect(outlineOf(site).map(({ name }) => name)).toEqual([
      'Left',
      'Loop 3',
      'Loop 1',
      'Right',
      'Loop 5',
      'Loop 2',
      'Loop 4',
      'stop line',
      'Car'
    ]);
  });

  it('says size, place and lane of a loop', () => {
    expect(outlineOf(site)[1]).toEqual({
      ref: { kind: 'loop', id: 'L3' },
      name: 'Loop 3',
      what: 'rectangle loop',
      size: '2.00 m × 2.00 m, 3 turns',
      position: '0.00 m, −5.00 m',
      lane: 'left'
    });
  });

  it('says every length in the units that the document shows', () => {
    const [item] = outlineOf(siteWith({ shapes: [square(0, 0, 1.8288)], units: 'imperial' }));
    expect(item?.size).toBe('6\'-0" × 6\'-0", 3 turns');
  });

  it('describes circles and polygons by what matters of them', () => {
    const shapes = [
      { kind: 'circle' as const, centre: [0, 0] as const, diameter: 1.8 },
      { kind: 'polygon' as const, points: [[4, 0], [7, 0], [7, 4]] as const } // prettier-ignore
    ];
    expect(outlineOf(siteWith({ shapes })).map(({ size }) => size)).toEqual([
      '3 corners, 12.00 m round, 3 turns',
      '1.80 m across, 3 turns'
    ]);
  });
});
