/** What a known vehicle at its places changes in the loops of a design. */
import type { Placement } from '#physics/field/filaments';
import { complex } from '#physics/numeric/complex';
import type { SolvedCircuit } from '../../electrical/circuit-model';
import { clearanceOf, raised } from '../../electrical/raised';
import { changeOf, type Change } from '../../electrical/vehicle-effect';
import type { Added } from './design';
import type { StandingVehicle } from './places';

/** Of each of its places. */
export type Changes = readonly Added[];

const asAdded = (change: Change, scale: number): Added => {
  const scaled = change.map((row) =>
    row.map((value) =>
      typeof value === 'number' ? complex(scale * value) : complex(scale * value.re, scale * value.im)
    )
  );
  return (i, j) => scaled[i]![j]!;
};

/**
 * Of a circuit that differs from the design the quick mesh says by what share the change changes, which it knows much better
 * than the change itself.
 */
export interface VehicleChanges {
  readonly asDesigned: Changes;
  /** On a circuit whose loops lie elsewhere. */
  readonly on: (solved: SolvedCircuit) => Changes;
  /** Lifted by so many metres, as far as its clearance allows; and the share that this is. */
  readonly lifted: (by: number) => Changes;
  readonly roomFor: (by: number) => number;
}

/** Of the loops' own changes together. */
const sizeOf = (change: Change): number =>
  change.reduce((sum, row, k) => {
    const value = row[k]!;
    return sum + (typeof value === 'number' ? value : value.re);
  }, 0);

export const vehicleChanges = (
  nominal: SolvedCircuit,
  { body, placements }: StandingVehicle
): VehicleChanges => {
  const places = placements.map((placement) => {
    const fine = changeOf(nominal, body, placement);
    const quick = sizeOf(changeOf(nominal, body, placement, 'coarse'));
    return { placement, fine, scale: quick === 0 ? 1 : sizeOf(fine) / quick };
  });
  const each = (make: (placement: Placement) => Change): Changes =>
    places.map(({ placement, scale }) => asAdded(make(placement), scale));
  const shiftOf = (by: number): number => Math.max(-clearanceOf(body), by);
  const asDesigned = places.map(({ fine }) => asAdded(fine, 1));
  return {
    asDesigned,
    on: (solved) => each((placement) => changeOf(solved, body, placement, 'coarse')),
    lifted: (by) => {
      const shift = shiftOf(by);
      if (shift === 0) return asDesigned;
      const other = raised(body, shift);
      return each((placement) => changeOf(nominal, other, placement, 'coarse'));
    },
    roomFor: (by) => shiftOf(by) / Math.abs(by)
  };
};
