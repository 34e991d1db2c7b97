import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogueVehicles, listedVehicle, vehicleOf } from '#plan/catalogue/vehicles';
import type { VehiclePart } from '#plan/schema';
import {
  dimensionsOf,
  drawVehicle,
  LINE,
  partAt,
  spread,
  type Box,
  type DrawnPart
} from '#ui/vehicles/drawing';

const ofRing = (axis: readonly [number, number, number]) => {
  const ring: VehiclePart = {
    kind: 'ring',
    centre: [0.2, 0.5, 0.4],
    radius: 0.3,
    conductorRadius: 0.01,
    axis
  };
  const vehicle = vehicleOf('v', {
    vehicles: [{ id: 'v', name: '', parts: [ring], body: { width: 1, length: 2 } }]
  })!;
  const drawing = drawVehicle(vehicle, 600);
  const [drawn] = drawing.parts;
  if (drawn?.kind !== 'ring') throw new Error('a ring is drawn as one');
  return { drawn, scale: drawing.scale };
};
const upright = (turn: number): number => ((turn % 180) + 180) % 180;

describe('a drawn vehicle', () => {
  it.each(catalogueVehicles.map((vehicle) => [vehicle.id, vehicle] as const))(
    'is to scale, in its place and inside the picture: %s',
    (_, vehicle) => {
      for (const width of [320, 560, 900]) {
        const { parts, scale, road, outline, height } = drawVehicle(vehicle, width);
        const middle = { x: outline.x + outline.width / 2, y: outline.y + outline.height / 2 };
        expect(outline.width / scale).toBeCloseTo(vehicle.bodyLength, 9);
        expect(outline.height / scale).toBeCloseTo(vehicle.bodyWidth, 9);
        parts.forEach((drawn, k) => {
          const part = vehicle.parts[k]!;
          if (drawn.kind === 'plate' && part.kind === 'plate') {
            expect(drawn.plan.width / scale).toBeCloseTo(part.length, 9);
            expect(drawn.plan.height / scale).toBeCloseTo(part.width, 9);
            expect((road - drawn.side.y - drawn.side.height / 2) / scale).toBeCloseTo(part.height, 9);
            expect((drawn.plan.x + drawn.plan.width / 2 - middle.x) / scale).toBeCloseTo(part.centre[1], 9);
            expect((drawn.plan.y + drawn.plan.height / 2 - middle.y) / scale).toBeCloseTo(part.centre[0], 9);
          }
          if (drawn.kind === 'ring' && part.kind === 'ring') {
            expect(drawn.side.rx / scale).toBeCloseTo(part.radius, 9);
            expect((road - drawn.side.cy) / scale).toBeCloseTo(part.centre[2], 9);
          }
          expect(boxOf(drawn).x).toBeGreaterThanOrEqual(0);
          expect(boxOf(drawn).x + boxOf(drawn).width).toBeLessThanOrEqual(width);
          expect(boxOf(drawn).y + boxOf(drawn).height).toBeLessThanOrEqual(height);
        });
      }
    }
  );

  const boxOf = (drawn: DrawnPart): Box =>
    drawn.kind === 'plate'
      ? drawn.plan
      : { x: drawn.side.cx - drawn.side.rx, y: drawn.side.cy, width: 2 * drawn.side.rx, height: 0 };

  it('shows rings as they lie', () => {
    // an upright wheel along the vehicle: a circle from the side, a line ahead from above
    const wheel = ofRing([1, 0, 0]).drawn;
    expect(wheel.side.ry).toBeCloseTo(wheel.side.rx, 9);
    expect(wheel.plan.ry).toBeCloseTo(0, 9);
    expect(upright(wheel.plan.turn)).toBeCloseTo(0, 9);
    // across the vehicle: lines from both sides, upright and across
    const hoop = ofRing([0, 1, 0]).drawn;
    expect([hoop.side.ry, hoop.plan.ry]).toEqual([0, 0]);
    expect([upright(hoop.side.turn), upright(hoop.plan.turn)]).toEqual([90, 90]);
    // lying: a circle from above, a level line from the side
    const lying = ofRing([0, 0, 1]).drawn;
    expect(lying.plan.ry).toBeCloseTo(lying.plan.rx, 9);
    expect(upright(lying.side.turn)).toBeCloseTo(0, 9);
    // leaning back by 45°, its normal ahead and up: its line falls to the front
    const leaning = ofRing([0, 1, 1]).drawn;
    expect(leaning.side.ry).toBeCloseTo(0, 9);
    expect(upright(leaning.side.turn)).toBeCloseTo(45, 9);
    expect(leaning.plan.ry / leaning.plan.rx).toBeCloseTo(Math.SQRT1_2, 9);
  });

  it('writes each height once, and no two over one another', () => {
    const narrow = drawVehicle(listedVehicle('lorry-articulated')!, 320);
    expect(narrow.levels[0]!.wordsY).toBeGreaterThan(LINE - 1);
    expect(narrow.levels.at(-1)!.wordsY).toBeLessThan(narrow.road);
    const lorry = drawVehicle(listedVehicle('lorry-articulated')!, 560);
    expect(lorry.levels.map(({ height }) => height)).toEqual([1.5, 0.85, 0.55, 0.45, 0.42]);
    lorry.levels.slice(1).forEach(({ wordsY }, k) => {
      expect(wordsY - lorry.levels[k]!.wordsY).toBeGreaterThanOrEqual(LINE - 1e-9);
    });
  });

  it('gives the chosen part its length and width', () => {
    const lorry = listedVehicle('lorry')!;
    const drawing = drawVehicle(lorry, 560);
    const axle = dimensionsOf(drawing, lorry.parts[2]!, 2)!;
    expect(axle.length.metres).toBe(0.3);
    expect((axle.length.b - axle.length.a) / drawing.scale).toBeCloseTo(0.3, 9);
    expect((axle.width!.b - axle.width!.a) / drawing.scale).toBeCloseTo(1.9, 9);
    const bicycle = listedVehicle('bicycle')!;
    expect(dimensionsOf(drawVehicle(bicycle, 560), bicycle.parts[0]!, 0)).toMatchObject({
      length: { metres: 0.62 },
      width: null
    });
    expect(dimensionsOf(drawing, lorry.parts[0]!, 9)).toBeNull();
  });

  it('finds the part at a place, a small one before the large one that it lies on', () => {
    const lorry = listedVehicle('lorry')!;
    const drawing = drawVehicle(lorry, 560);
    const middleOf = ({ x, y, width, height }: Box): [number, number] => [x + width / 2, y + height / 2];
    drawing.parts.forEach((part) => {
      if (part.kind !== 'plate') throw new Error('a lorry is plates');
      expect(partAt(drawing, ...middleOf(part.side))).toBe(part.index);
    });
    const axle = drawing.parts[3]!;
    if (axle.kind !== 'plate') throw new Error('an axle is a plate');
    expect(partAt(drawing, ...middleOf(axle.plan))).toBe(3);
    expect(partAt(drawing, 1, 1)).toBeNull();
    const bicycle = drawVehicle(listedVehicle('bicycle')!, 560);
    const [front] = bicycle.parts;
    if (front?.kind !== 'ring') throw new Error('a rim is a ring');
    expect(partAt(bicycle, front.side.cx + 3, front.side.cy)).toBe(0);
    expect(partAt(bicycle, front.plan.cx, front.plan.cy + 2)).toBe(0);
  });
});

describe('spreading words', () => {
  it('leaves those that are far enough apart, and keeps the middle of those that are not', () => {
    expect(spread([0, 20, 40], 12)).toEqual([0, 20, 40]);
    expect(spread([10, 10, 10], 12)).toEqual([-2, 10, 22]);
    expect(spread([], 12)).toEqual([]);
  });

  it('keeps order and distance whatever comes', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 100 }), { maxLength: 12 }), (places) => {
        const sorted = places.toSorted((a, b) => a - b);
        const spreadOut = spread(sorted, 12);
        expect(spreadOut).toHaveLength(sorted.length);
        spreadOut.slice(1).forEach((place, k) => {
          expect(place - spreadOut[k]!).toBeGreaterThanOrEqual(12 - 1e-9);
        });
        const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
        expect(sum(spreadOut)).toBeCloseTo(sum(sorted), 6);
      }),
      { seed: 31_415 }
    );
  });
});
