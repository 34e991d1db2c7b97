/**
 * A vehicle over a loop over a mat. The product gives the vehicle the currents that the loop drives in the mat as sources,
 * and its own images in the mat's apparent plane. Here vehicle and mat are solved together as one matrix instead, without
 * images: Galerkin's plate and every mesh of the mat.
 */
import { describe, expect, it } from 'vitest';
import { filamentsOf, type Placement } from '#physics/field/filaments';
import { choleskyFactor, dot, forwardSubstitute } from '#physics/numeric/cholesky';
import { cellSet, latticeMatrix } from '#physics/steel/lattice';
import { latticeFactor, matScreen, sinkOf, type Bars } from '#physics/steel/mat';
import { inducedDipoles, ownReflection, reflectionOf } from '#physics/steel/reflection';
import { buildBody } from '#physics/vehicle/body';
import { dipoleFluxThrough, fluxThrough } from '#physics/vehicle/flux';
import type { Part } from '#physics/vehicle/parts';
import { reduceBlocks } from '#physics/vehicle/symmetry';
import { PATIENCE } from '../support/arbitraries';
import { plate, rim } from '../support/vehicles';
import { rectangleWinding } from '../support/windings';

const BARS: Bars = { pitch: 0.2, radius: 0.005, resistivity: 1e-18, relativePermeability: 1 };
const F = 50_000;
const Z = -0.13;
const LOOP = filamentsOf(rectangleWinding(1.8, 1.8, { turns: 3 }));
const FINENESS = 0.7;

const matOf = (across: number, along: number) => {
  const cells = cellSet(across, along, () => true);
  const corner = { x: (-across * BARS.pitch) / 2, y: (-along * BARS.pitch) / 2, heading: 90 };
  return { cells, corner, screen: matScreen(BARS, cells, latticeFactor(cells, BARS), corner, Z) };
};

const together = (
  parts: readonly Part[],
  at: Placement,
  { cells, corner, screen }: ReturnType<typeof matOf>
): number => {
  const body = buildBody(parts, FINENESS);
  const meshes = cells.size;
  const size = meshes + body.size;
  const matrix = new Float64Array(size * size);
  const lattice = latticeMatrix(cells, BARS.pitch, BARS.radius);
  for (let i = 0; i < meshes; i++)
    for (let j = 0; j <= i; j++) matrix[i * size + j] = lattice[i * meshes + j]!;
  for (let i = 0; i < cells.across; i++)
    for (let j = 0; j < cells.along; j++) {
      const mesh = rectangleWinding(BARS.pitch, BARS.pitch, { turns: 1, bottom: Z }, [
        corner.x + (i + 0.5) * BARS.pitch,
        corner.y + (j + 0.5) * BARS.pitch
      ]);
      // reduced by the vehicle's own factor, whose matrix then is one
      const coupling = reduceBlocks(body.blocks, fluxThrough(body, filamentsOf(mesh), at));
      coupling.forEach((value, k) => {
        matrix[(meshes + k) * size + cells.index[i * cells.along + j]!] = value;
      });
    }
  for (let k = 0; k < body.size; k++) matrix[(meshes + k) * size + meshes + k] = 1;
  const flux = new Float64Array(size);
  flux.set(screen.fluxOf(LOOP));
  flux.set(reduceBlocks(body.blocks, fluxThrough(body, LOOP, at)), meshes);
  const reduced = forwardSubstitute(choleskyFactor(matrix, size)!, flux);
  return -dot(reduced, reduced) - ownReflection(reflectionOf(screen, LOOP), F).re;
};

const withImages = (parts: readonly Part[], at: Placement, { screen }: ReturnType<typeof matOf>): number => {
  const body = buildBody(parts, FINENESS, -Z + sinkOf(BARS, F));
  const flux = fluxThrough(body, LOOP, at);
  const [induced] = dipoleFluxThrough(body, inducedDipoles(reflectionOf(screen, LOOP), F), at);
  induced.forEach((value, k) => (flux[k]! += value));
  const reduced = reduceBlocks(body.blocks, flux);
  return -dot(reduced, reduced);
};

describe('a vehicle over a mat, against vehicle and mat solved together', { timeout: PATIENCE }, () => {
  const small = matOf(15, 15);
  const large = matOf(18, 27);
  it.each<[string, readonly Part[], ReturnType<typeof matOf>, number, number, number]>([
    ['a car on a mat smaller than itself', [plate(1.6, 4.2, 0.45)], small, 0, 0, 0.02],
    ['a car half off the mat', [plate(1.6, 4.2, 0.45)], small, 0.3, 1.8, 0.02],
    ['a car on a long mat', [plate(1.6, 4.2, 0.45)], large, 0.2, 1.2, 0.02],
    ['the engine of a motorcycle', [plate(0.45, 0.9, 0.27)], large, 0.7, 0.2, 0.03],
    ['a high and long lorry', [plate(2.3, 9.4, 0.9)], large, 0, 0.5, 0.06],
    ['a standing wheel', [rim()], large, 0.85, 0.2, 0.03],
    ['a lying ring', [rim({ axis: [0, 0, 1] })], large, 0.2, 0.2, 0.03]
  ])('%s', (_, parts, mat, x, y, tolerance) => {
    const at = { x, y, heading: 90 };
    const exact = together(parts, at, mat);
    expect(exact).toBeLessThan(0);
    expect(Math.abs(withImages(parts, at, mat) / exact - 1)).toBeLessThan(tolerance);
  });
});
