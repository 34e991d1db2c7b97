import type { Translation } from '../message';

/** The cut across a slot. */
export const section = {
  'section.label': 'Fuge von {name}, maßstäblich: {depth} tief und {width} breit',
  'section.surface': 'Fahrbahnoberfläche',
  'section.cover': 'Überdeckung {cover}',
  'section.out': '{length} heraus',
  'section.coverWords': '{cover} Überdeckung',
  'section.outWords': '{length} herausragend',
  'section.shared': 'gemeinsam',
  'section.slotWords': {
    one: '{count} Draht in der Fuge, {cover}.',
    other: '{count} Drähte in der Fuge, {cover}.'
  },
  'section.sharedWords': {
    one: '{count} Draht in der gemeinsamen Fuge, {cover}.',
    other: '{count} Drähte in der gemeinsamen Fuge, abwechselnd die der beiden Hälften, {cover}.'
  },
  'section.mat': 'Bewehrungsmatte in {depth} Tiefe: Stäbe {bar} alle {pitch}.',
  'section.plate': 'Stahlplatte in {depth} Tiefe.',
  'section.unknownWire': 'Der Draht dieser Schleife ist unbekannt.'
} as const satisfies Partial<Translation>;
