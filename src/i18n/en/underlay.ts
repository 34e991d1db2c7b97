/** Pictures under the plan: what the drawing itself says about them. */
export const underlay = {
  'underlay.missing': 'Picture missing: {name}',
  'underlay.broken': 'Cannot be shown: {name}',
  'underlay.notToScale': 'Not to scale',
  'underlay.outside': 'outside the picture',
  'underlay.none': 'no picture to scale',
  'underlay.missingHere': {
    one: 'A picture of this site is missing: {names}. Its place is kept, and saving over a file that holds it does not lose it.',
    other:
      '{count} pictures of this site are missing: {names}. Their places are kept, and saving over a file that holds them does not lose them.'
  },
  'underlay.brokenHere': {
    one: 'The bytes of a picture of this site cannot be shown: {names}. They are kept as they are.',
    other: 'The bytes of {count} pictures of this site cannot be shown: {names}. They are kept as they are.'
  },
  'underlay.step.recovered': 'Take pictures over from the file',
  'underlay.show': 'Show the place'
} as const;
