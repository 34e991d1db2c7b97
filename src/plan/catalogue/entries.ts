/**
 * What a catalogue entry holds. SI; every entry says where its numbers come from. Names, and the
 * sources of vehicles, which are shown, are messages: `spoken-names.ts`.
 */
import { z } from 'zod';
import { cable, unit, vehicle } from '../schema';

const id = z.string().regex(/^[a-z][a-z0-9.-]*$/);
const positive = z.number().positive();
const source = z.string().min(20);

const name = z.string().min(1).optional();

const wireEntry = z.strictObject({
  id,
  name,
  conductorDiameter: positive,
  insulatedDiameter: positive,
  insulationPermittivity: z.number().min(1).max(10),
  source
});

/**
 * `resistancePerMetre_ohm` is the direct-current value of both conductors at 20 °C; `conductorDiameter` and `spacing`
 * (between the two wires' axes) let the solver find the skin effect at its own frequency and temperature.
 * `inductancePerMetre_H` is the total at 50 kHz. What a user's own cable states is taken as it stands, at the operating
 * frequency.
 */
const cableEntry = cable.extend({
  name,
  resistancePerMetre_ohm: positive,
  inductancePerMetre_H: positive,
  capacitancePerMetre_F: positive,
  conductorDiameter: positive,
  spacing: positive,
  source
});

const vehicleEntry = vehicle.extend({
  name,
  /** Outline for drawing, centred on the vehicle's own origin. */
  bodyWidth: positive,
  bodyLength: positive,
  /** Keeps to the lane's middle, or may ride anywhere across it. */
  paths: z.enum(['lane', 'anywhere']),
  /** Shown on every circuit; the others only where they are asked for, placed, or named as a lane's largest. */
  usual: z.boolean()
});

/** A plate that stands for a published vehicle class. */
const testPlateEntry = vehicleEntry.extend({
  /** ΔL/L that the class means on the standard loop: a drop, so negative. */
  onStandardLoop: z.number().gt(-1).lt(0),
  parts: vehicle.shape.parts.length(1)
});

const pavementEntry = z.strictObject({
  id,
  name,
  relativePermittivity: positive,
  /** Dry to wet. */
  range: z.tuple([positive, positive]),
  source
});

const unitEntry = unit.extend({ id, name, source });

export const wireEntries = z.array(wireEntry);
export const cableEntries = z.array(cableEntry);
export const vehicleEntries = z.array(vehicleEntry);
export const testPlateEntries = z.array(testPlateEntry);
export const pavementEntries = z.array(pavementEntry);
export const unitEntries = z.array(unitEntry);

export type WireEntry = z.infer<typeof wireEntry>;
export type CableEntry = z.infer<typeof cableEntry>;
export type VehicleEntry = z.infer<typeof vehicleEntry>;
export type TestPlateEntry = z.infer<typeof testPlateEntry>;
export type PavementEntry = z.infer<typeof pavementEntry>;
export type UnitEntry = z.infer<typeof unitEntry>;
