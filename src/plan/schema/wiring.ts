/** Loops, the wires and cables they are made of, and the circuits and units that they are wired to. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { id, name, point, whole, within } from './basics';
import { handling } from './drawing';
import { shape } from './shapes';

/** A way on the plan whose ends hang on marks: `length` = the drawn way plus the allowance for slack and depth. */
const route = z.looseObject({
  /** Mark at the far end, towards the cabinet. */
  to: id,
  via: z.array(point).max(COUNTS.points).default([]),
  allowance: within(BOUNDS.tail).default(0)
});

export const loop = z.looseObject({
  id,
  name: name.default(''),
  turns: whole(BOUNDS.turns.min, BOUNDS.turns.max),
  wire: id,
  slot: z.looseObject({
    depth: within(BOUNDS.slotDepth),
    width: within(BOUNDS.slotWidth),
    relativePermittivity: within(BOUNDS.permittivity).default(4)
  }),
  tail: z
    .looseObject({
      length: within(BOUNDS.tail),
      /** Drawn from the loop's nearest corner to a pull box; the length then follows the drawing. */
      route: route.optional()
    })
    .default({ length: 0 }),
  /** A resistance that the model does not know (a joint, losses in the ground), in series with the loop. */
  addedResistance_ohm: within(BOUNDS.addedResistance).optional(),
  ...handling,
  shape
});

/** A stated figure holds at the operating frequency; one that is not stated follows from the pair's geometry. */
export const cable = z.looseObject({
  id,
  name: name.default(''),
  resistancePerMetre_ohm: within(BOUNDS.resistancePerMetre).optional(),
  inductancePerMetre_H: within(BOUNDS.inductancePerMetre).optional(),
  capacitancePerMetre_F: within(BOUNDS.capacitancePerMetre).optional(),
  conductorDiameter: within(BOUNDS.wireDiameter).optional(),
  /** Between the axes of the two wires, metres. */
  spacing: within(BOUNDS.wireDiameter).optional(),
  relativePermittivity: within(BOUNDS.permittivity).optional()
});

/** The user's own wire, beside the built-in catalogue. */
export const wire = z.looseObject({
  id,
  name: name.default(''),
  conductorDiameter: within(BOUNDS.wireDiameter),
  insulatedDiameter: within(BOUNDS.wireDiameter),
  insulationPermittivity: within(BOUNDS.permittivity).default(2.3)
});

const output = z.looseObject({
  mode: z.enum(['presence', 'pulse']).default('presence'),
  delay_s: within(BOUNDS.seconds).default(0),
  extension_s: within(BOUNDS.seconds).default(0),
  longestPresence_s: within(BOUNDS.seconds).nullable().default(null),
  /** Where one is not stated, the usual value of `catalogue/timings.ts` holds. */
  pulse_s: within(BOUNDS.pulse).optional(),
  rearm_s: within(BOUNDS.timing).optional(),
  recovery_s: within(BOUNDS.timing).optional(),
  adaptation_s: within(BOUNDS.adaptation).optional()
});

const channel = z.looseObject({
  unit: id,
  number: whole(1, COUNTS.channels),
  /** Position in the unit's `settings_F`, counted from 1. */
  frequencySetting: whole(1, COUNTS.settings).default(1),
  /** A number here overrides the setting. */
  frequency_Hz: within(BOUNDS.frequency).nullable().default(null),
  /** A frequency plan leaves the channel's setting alone. */
  pinned: z.boolean().optional(),
  tripThreshold: within(BOUNDS.ratio),
  releaseRatio: within({ min: 0.01, max: 1 }).default(0.6),
  output: output.default({ mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null })
});

export const circuit = z.looseObject({
  id,
  name: name.default(''),
  /** Loops of a string in series, strings in parallel. */
  strings: z
    .array(
      z
        .array(z.looseObject({ loop: id, reversed: z.boolean().default(false) }))
        .min(1)
        .max(COUNTS.loopsPerCircuit)
    )
    .min(1)
    .max(COUNTS.loopsPerCircuit),
  leadIn: z.looseObject({
    cable: id,
    length: within(BOUNDS.leadIn),
    /** Further cables towards the cabinet, in that order. */
    further: z
      .array(z.looseObject({ cable: id, length: within(BOUNDS.leadIn) }))
      .max(COUNTS.cablesInRow)
      .optional(),
    /** Drawn from a pull box to the cabinet; the first cable's length then follows the drawing. */
    route: route.extend({ from: id }).optional()
  }),
  channel: channel.nullable().default(null),
  /** Vehicles asked for: each of them must make a call on this circuit. */
  detect: z.array(id).max(COUNTS.vehicles).default(['car'])
});

/** How a setting's capacitance was found on the site: a circuit of known inductance, and the frequency that was read. */
const calibration = z.looseObject({
  /** Counted from 1. */
  setting: whole(1, COUNTS.settings),
  /** Name of the circuit as it was then: a record, not a reference. */
  circuit: name,
  frequency_Hz: within(BOUNDS.frequency),
  /** At the terminals, as the model had it. */
  inductance_H: within(BOUNDS.inductance),
  /** What came out, and what the setting had been before. */
  capacitance_F: within(BOUNDS.settingCapacitance),
  before_F: within(BOUNDS.settingCapacitance)
});

export const unit = z.looseObject({
  id,
  name: name.default(''),
  channels: whole(1, COUNTS.channels),
  scansInTurn: z.boolean(),
  measuringTime_s: within(BOUNDS.measuringTime),
  settings_F: z.array(within(BOUNDS.settingCapacitance)).min(1).max(COUNTS.settings),
  /** Where it is given, the settings are shown and typed as frequencies on this inductance; the capacitances still count. */
  statedInductance_H: within(BOUNDS.inductance).optional(),
  /** At most one a setting. */
  calibrations: z.array(calibration).max(COUNTS.settings).optional(),
  inductanceRange_H: z.tuple([within(BOUNDS.inductance), within(BOUNDS.inductance)])
});

/** Lead-ins that lie side by side. */
export const conduit = z.looseObject({
  id,
  name: name.default(''),
  circuits: z.array(id).max(COUNTS.circuits).default([]),
  length: within(BOUNDS.leadIn),
  /** Between every two of them, as an amount; the default stands in `catalogue/conduits.ts`. */
  mutualPerMetre_H: within(BOUNDS.mutualPerMetre).optional()
});
