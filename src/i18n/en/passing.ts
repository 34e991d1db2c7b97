/** Vehicles that pass: the ways of looking at it, and what stands under more than one of them. */
export const passing = {
  'passing.vehicles': 'Vehicles',
  'passing.addVehicle': 'Another vehicle',
  'passing.choose': 'Choose …',
  'passing.mode': 'What to look at',
  'passing.mode.along': 'Along the lane',
  'passing.mode.across': 'Across the lane',
  'passing.mode.calls': 'Calls over time',
  'passing.mode.speed': 'Speed pair',
  'passing.mode.approach': 'Setting out by speed'
} as const;
