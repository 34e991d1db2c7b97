/** Where a mesh is too coarse for its plate's height. From above an endless plate limits every response: the loop's image. */
import { describe, expect, it } from 'vitest';
import { mutualInductance } from '#physics/inductance/loop';
import { ROUGHEST, roughnessOf } from '#physics/vehicle/roughness';
import { partsOf } from '#analysis/electrical/bodies';
import { catalogueVehicles } from '#plan/catalogue/vehicles';
import { PATIENCE } from '../support/arbitraries';
import { bodyOf, change, plate } from '../support/vehicles';
import { mirrored, rectangleWinding } from '../support/windings';

const square = rectangleWinding(1.8, 1.8, { turns: 3 });
/** Response over that of an endless plate, which no plate can exceed. */
const shareOfImage = (width: number, length: number, height: number): number =>
  change(bodyOf([plate(width, length, height)]), square) /
  -mutualInductance(square, mirrored(square, height));

describe('a plate too large for its height', { timeout: PATIENCE }, () => {
  it.each([
    [20, 60, 0.02],
    [60, 60, 0.3]
  ])('of %s × %s m at %s m is told, and answers nonsense', (width, length, height) => {
    expect(roughnessOf(bodyOf([plate(width, length, height)]))).toBeGreaterThan(ROUGHEST);
    // so large a plate should come within a few percent of the limit
    expect(Math.abs(shareOfImage(width, length, height) - 1)).toBeGreaterThan(0.1);
  });

  it.each([
    [2.4, 12, 0.1],
    [6, 20, 0.5],
    [1.6, 4.2, 0.1]
  ])('of %s × %s m at %s m is none, and stays below the limit', (width, length, height) => {
    expect(roughnessOf(bodyOf([plate(width, length, height)]))).toBeLessThan(ROUGHEST);
    const share = shareOfImage(width, length, height);
    expect(share).toBeLessThan(1.005);
    expect(share).toBeGreaterThan(0.5);
  });

  it('is none in the catalogue', () => {
    for (const vehicle of catalogueVehicles)
      expect(roughnessOf(bodyOf(partsOf(vehicle)))).toBeLessThan(ROUGHEST);
  });
});
