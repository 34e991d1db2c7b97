/** The flux of a loop through the meshes of a mat, against the closed form of two coils: the loop and one mesh (Grover 1946). */
import { describe, expect, it } from 'vitest';
import { filamentsOf, inFrame } from '#physics/field/filaments';
import { mutualInductance } from '#physics/inductance/loop';
import { meshFluxes } from '#physics/steel/bar-potential';
import { cellSet } from '#physics/steel/lattice';
import { polygonWinding, rectangleWinding } from '../support/windings';

const MU0_OVER_4PI = 1e-7;
const PITCH = 0.2;

describe('the flux through every mesh', () => {
  it.each([
    ['7 cm below the wires', -0.12, 90],
    ['2 cm below them', -0.07, 90],
    ['2 cm below, the mat turned', -0.07, 63],
    ['30 cm below', -0.35, 110]
  ])('%s is that of two coils, to 2e-4 of the largest', (_, z, heading) => {
    const loop = rectangleWinding(1.8, 1.5, { turns: 1, bottom: -0.05 });
    const cells = cellSet(14, 14, (i, j) => i + j > 2);
    const corner = { x: -1.43, y: -1.37, heading };
    const filaments = filamentsOf(loop);
    const found = meshFluxes(inFrame(filaments, corner), filaments.length, cells, PITCH, z);
    const turn = ((heading - 90) * Math.PI) / 180;
    const at = (u: number, v: number): readonly [number, number] => [
      corner.x + u * Math.cos(turn) - v * Math.sin(turn),
      corner.y + u * Math.sin(turn) + v * Math.cos(turn)
    ];
    const errors: number[] = [];
    let largest = 0;
    for (let i = 0; i < 14; i++)
      for (let j = 0; j < 14; j++) {
        const cell = cells.index[i * 14 + j]!;
        if (cell < 0) continue;
        const [u, v] = [i * PITCH, j * PITCH];
        const mesh = polygonWinding(
          [at(u, v), at(u + PITCH, v), at(u + PITCH, v + PITCH), at(u, v + PITCH)],
          { turns: 1, bottom: z }
        );
        const wanted = mutualInductance(loop, mesh);
        largest = Math.max(largest, Math.abs(wanted));
        errors.push(Math.abs(found[cell]! * MU0_OVER_4PI - wanted));
      }
    expect(errors).toHaveLength(cells.size);
    expect(Math.max(...errors) / largest).toBeLessThan(2e-4);
  });
});
