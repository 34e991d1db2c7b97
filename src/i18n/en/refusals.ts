/** Why something that was typed, or a file, is not taken. */
export const refusals = {
  'kind.length': 'length',
  'kind.angle': 'angle',
  'kind.count': 'count',
  'kind.frequency': 'frequency',
  'kind.inductance': 'inductance',
  'kind.capacitance': 'capacitance',
  'kind.resistance': 'resistance',
  'kind.time': 'time',
  'kind.ratio': 'ratio',
  'kind.temperature': 'temperature',
  'kind.volume': 'volume',
  'kind.speed': 'speed',
  'kind.pace': 'pace',
  'kind.plain': 'number',

  'refusal.quoted': '“{text}”',
  'refusal.mixedSum':
    'a number in the sum has no unit and the others have different ones; write its unit too',
  'refusal.product': 'a {kind} times a {kind} is no {kind}; leave one unit out',
  'refusal.divisionByNought': 'a division by nought has no result',
  'refusal.quotient': 'a division by a {kind} gives no {kind}; divide by a number without a unit',
  'refusal.empty': 'nothing is written here; write a number',
  'refusal.tooLong': 'this is too long; write at most {most} characters',
  'refusal.resultTooLarge': 'the result is too large',
  'refusal.count': 'a count must be a whole number, nought or more',
  'refusal.twoScales': 'temperatures of two scales cannot be added; use one unit',
  'refusal.noParenthesis': 'a closing parenthesis is missing',
  'refusal.noNumberAtEnd': 'a number is missing at the end',
  'refusal.noNumberBefore': 'a number is missing before {text}',
  'refusal.unexpected': '{text} is not expected there',
  'refusal.secondUnit': '{text} follows a value that already has its unit',
  'refusal.unrelated':
    'it is not clear how {text} belongs to what stands before it; put + between them, or leave the space out',
  'refusal.dash': 'the dash between feet and inches may join or subtract; write 6\'-6" or 6 ft 6 in to join',
  'refusal.inchesWithoutMark':
    'it is not clear what is multiplied or divided; write the inches with their mark: 6\'-6"',
  'refusal.twelveInches': 'inches behind feet must be less than 12',
  'refusal.wholeFeet': 'feet in front of inches must be a whole number',
  'refusal.sign': '{text} is not understood',
  'refusal.hyphen': '{text} can be read in two ways; write {joined}, or {apart} for a difference',
  'refusal.noUnits': '{text} is not understood; write a number without a unit',
  'refusal.notAUnit': '{text} is not a unit of {kind}; try {symbols}',
  'refusal.tooLarge': '{text} is too large',
  'refusal.tooSmall': '{text} is too small',
  'refusal.noNumber': '{text} is not a number',
  'refusal.commaOrGroup':
    '{text} can be read in two ways; write {decimal} with a dot, or {whole} without a comma',
  'refusal.dotOrGroup':
    '{text} can be read in two ways; write {decimal} with a comma, or {whole} without a dot'
} as const;
