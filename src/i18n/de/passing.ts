import type { Translation } from '../message';

/** Vehicles that pass: the ways of looking at it, and what stands under more than one of them. */
export const passing = {
  'passing.vehicles': 'Fahrzeuge',
  'passing.addVehicle': 'Weiteres Fahrzeug',
  'passing.choose': 'Wählen …',
  'passing.mode': 'Was zu sehen ist',
  'passing.mode.along': 'Längs des Fahrstreifens',
  'passing.mode.across': 'Quer zum Fahrstreifen',
  'passing.mode.calls': 'Anforderungen über der Zeit',
  'passing.mode.speed': 'Geschwindigkeitspaar',
  'passing.mode.approach': 'Lage nach Geschwindigkeit'
} as const satisfies Partial<Translation>;
