/**
 * A mat of bars as a grid of shorted meshes: bars along both sides of a square pitch, bonded where they cross, in one
 * plane. Each mesh carries one current; the bars have their external inductance as straight filaments, and the internal
 * impedance of a round wire of their metal. Left out: that crossing bars lie a bar's diameter apart, and bars that end.
 */
import { MU0 } from '../constants';
import { DIPOLE } from '../field/dipoles';
import { inFrame, type Filaments, type Placement } from '../field/filaments';
import { choleskyFactor, type CholeskyFactor } from '../numeric/cholesky';
import { complex, type Complex } from '../numeric/complex';
import { roundConductorImpedance } from '../wire/round-wire';
import { meshFluxes } from './bar-potential';
import { latticeMatrix, sharedBars, type CellSet } from './lattice';
import type { Screen } from './screen';

export interface Bars {
  readonly pitch: number;
  readonly radius: number;
  /** Ω·m */
  readonly resistivity: number;
  readonly relativePermeability: number;
  /** The mat's real bars, where these stand for them at a multiple of their pitch. */
  readonly standFor?: { readonly pitch: number; readonly radius: number };
}

/**
 * Bars at a multiple of the pitch that look the same from afar: equal sheet inductance, and in `barRatio` equal metal per
 * metre of width.
 */
export const widened = (bars: Bars, pitch: number): Bars => {
  const sink = bars.pitch * Math.log(bars.pitch / (2 * Math.PI * bars.radius));
  const radius = (pitch / (2 * Math.PI)) * Math.exp(-sink / pitch);
  return { ...bars, pitch, radius, standFor: { pitch: bars.pitch, radius: bars.radius } };
};

/** Of the inductances between the meshes; the same for equal sets of cells wherever they lie. */
export const latticeFactor = (cells: CellSet, { pitch, radius }: Bars): CholeskyFactor => {
  const factor = choleskyFactor(latticeMatrix(cells, pitch, radius), cells.size);
  if (!factor) throw new RangeError('bars that fill their pitch');
  return factor;
};

/** Series impedance of a bar over jω, H/m. */
export const barRatio = (bars: Bars, frequency: number): Complex => {
  const { pitch, radius } = bars.standFor ?? bars;
  const { resistance, inductance } = roundConductorImpedance(
    radius,
    frequency,
    bars.resistivity,
    bars.relativePermeability
  );
  const share = pitch / bars.pitch;
  return complex(share * inductance, (-share * resistance) / (2 * Math.PI * frequency));
};

/** `placement`: corner of cell (0, 0) on the plan, its cells' second direction as heading; `z` the height of the bars. */
export const matScreen = (
  bars: Bars,
  cells: CellSet,
  factor: CholeskyFactor,
  placement: Placement,
  z: number
): Screen => ({
  size: cells.size,
  factor,
  resist: (x) => sharedBars(cells, bars.pitch, x),
  fluxOf: (filaments: Filaments) => {
    const flux = meshFluxes(inFrame(filaments, placement), filaments.length, cells, bars.pitch, z);
    for (let k = 0; k < flux.length; k++) flux[k]! *= MU0 / (4 * Math.PI);
    return flux;
  },
  ratioAt: (frequency) => barRatio(bars, frequency),
  dipolesOf: (inPhase, ahead) => {
    const turn = ((placement.heading - 90) * Math.PI) / 180;
    const area = bars.pitch ** 2;
    const dipoles = new Float64Array(DIPOLE * cells.size);
    for (let i = 0; i < cells.across; i++)
      for (let j = 0; j < cells.along; j++) {
        const cell = cells.index[i * cells.along + j]!;
        if (cell < 0) continue;
        const u = (i + 0.5) * bars.pitch;
        const v = (j + 0.5) * bars.pitch;
        dipoles.set(
          [
            placement.x + u * Math.cos(turn) - v * Math.sin(turn),
            placement.y + u * Math.sin(turn) + v * Math.cos(turn),
            z,
            inPhase[cell]! * area,
            ahead[cell]! * area
          ],
          DIPOLE * cell
        );
      }
    return dipoles;
  }
});

/**
 * How much deeper than the bars a perfectly conducting plane would lie that looks the same from afar, metres: a grid of
 * wires has the sheet inductance µ0·(p/2π)·ln(p/2πa) and p times the bars' own (averaged boundary conditions of wire
 * grids, Kontorovich 1963, from memory; tests compare with whole mats).
 */
export const sinkOf = (bars: Bars, frequency: number): number =>
  (bars.pitch / (2 * Math.PI)) * Math.log(bars.pitch / (2 * Math.PI * bars.radius)) +
  (bars.pitch * barRatio(bars, frequency).re) / MU0;
