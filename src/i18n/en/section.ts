/** The cut across a slot. */
export const section = {
  'section.label': 'Slot of {name}, to scale: {depth} deep and {width} wide',
  'section.surface': 'Road surface',
  'section.cover': 'cover {cover}',
  'section.out': '{length} out',
  'section.coverWords': '{cover} of cover',
  'section.outWords': 'standing {length} out of it',
  'section.shared': 'shared',
  'section.slotWords': {
    one: '{count} wire in the slot, {cover}.',
    other: '{count} wires in the slot, {cover}.'
  },
  'section.sharedWords': {
    one: '{count} wire in the shared slot, {cover}.',
    other: '{count} wires in the shared slot, those of the two halves in turn, {cover}.'
  },
  'section.mat': 'Steel mat {depth} deep: {bar} bars every {pitch}.',
  'section.plate': 'Steel plate {depth} deep.',
  'section.unknownWire': 'The wire of this loop is unknown.'
} as const;
