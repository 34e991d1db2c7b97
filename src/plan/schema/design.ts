/**
 * What a design is made of: everything that a figure depends on. The present design's fields stand in the document itself,
 * those of a variant in its `design`; both are read by these very schemas.
 */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { note, within } from './basics';
import { lane, mark, path, probe, steel } from './roadway';
import { traffic } from './traffic';
import { vehicle } from './vehicles';
import { cable, circuit, conduit, loop, unit, wire } from './wiring';

/** Plus-or-minus tolerances, SI. */
const tolerances = z.looseObject({
  dimensions_m: within({ min: 0, max: 1 }).optional(),
  depth_m: within({ min: 0, max: 0.5 }).optional(),
  wirePitch_m: within({ min: 0, max: 0.05 }).optional(),
  leadInLength_m: within({ min: 0, max: 1_000 }).optional(),
  temperature_C: within({ min: 0, max: 60 }).optional(),
  relativePermittivity: within({ min: 0, max: 50 }).optional(),
  vehicleHeight_m: within({ min: 0, max: 2 }).optional()
});

export const designFields = {
  temperature_C: within(BOUNDS.temperature).default(20),
  /** Wire on the coldest and the hottest day; the defaults stand in `catalogue/tolerances.ts`. */
  temperatureRange_C: z.tuple([within(BOUNDS.temperature), within(BOUNDS.temperature)]).optional(),
  pavement: z
    .looseObject({
      material: z.string().max(40).default('asphalt'),
      relativePermittivity: within(BOUNDS.permittivity).default(5),
      /** Siemens per metre; 0 leaves the pavement's own losses out. */
      conductivity_S_m: within(BOUNDS.conductivity).optional()
    })
    .default({ material: 'asphalt', relativePermittivity: 5 }),
  lanes: z.array(lane).max(COUNTS.lanes).default([]),
  marks: z.array(mark).max(COUNTS.marks).default([]),
  loops: z.array(loop).max(COUNTS.loops).default([]),
  wires: z.array(wire).max(COUNTS.wires).default([]),
  cables: z.array(cable).max(COUNTS.cables).default([]),
  circuits: z.array(circuit).max(COUNTS.circuits).default([]),
  units: z.array(unit).max(COUNTS.units).default([]),
  conduits: z.array(conduit).max(COUNTS.conduits).default([]),
  vehicles: z.array(vehicle).max(COUNTS.vehicles).default([]),
  probes: z.array(probe).max(COUNTS.probes).default([]),
  paths: z.array(path).max(COUNTS.paths).default([]),
  traffic: traffic.optional(),
  steel: z.array(steel).max(COUNTS.steel).default([]),
  tolerances: tolerances.optional(),
  /** The share of a vehicle's response that steel may cost; the default stands in `catalogue/tolerances.ts`. */
  acceptedSteelCost: within(BOUNDS.steelCost).optional(),
  notes: note.optional()
};

export const design = z.looseObject(designFields);
