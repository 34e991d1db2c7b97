import type { Translation } from '../message';

/** Vehicles that pass: the ways of looking at it, and what stands under more than one of them. */
export const passing = {
  'passing.vehicles': 'Fahrzeuge',
  'passing.addVehicle': 'Weiteres Fahrzeug',
  'passing.choose': 'Wählen …',
  'passing.mode': 'Was zu sehen ist',
  'passing.mode.along': 'Längs',
  'passing.mode.across': 'Quer',
  'passing.mode.calls': 'Anforderungen',
  'passing.mode.speed': 'Geschwindigkeitspaar',
  'passing.mode.approach': 'Lage nach Geschwindigkeit'
} as const satisfies Partial<Translation>;
