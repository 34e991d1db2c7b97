/**
 * How far the model itself may be off beside tolerances, one standard deviation as a share: the engine is held against
 * closed forms to 0.2 % in inductance; copper as drawn, splices and terminals leave a resistance open by about as much as
 * a good meter; the pair's proximity effect, which is left out, and what a road adds to losses leave Q open by several
 * per cent; a real underside is no set of plates. Common practice but for the first.
 */
import type { Quantity } from '#plan/schema';

export const MODEL_ERROR: Readonly<Record<Quantity, number>> = {
  resistanceDc_ohm: 0.005,
  inductance_H: 0.004,
  q: 0.04,
  frequency_Hz: 0.002,
  insulation_ohm: 0,
  insulationBetween_ohm: 0,
  deltaLOverL: 0.05
};
