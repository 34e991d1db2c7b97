/** Why the calculation gave no answer. */
export const calculation = {
  'calculation.restarted': 'the calculation was restarted',
  'calculation.silent': 'no answer within {seconds} s',
  'calculation.notLoaded': 'the calculation could not be loaded',
  'calculation.unreadable': 'an answer could not be read'
} as const;
