/** Why a lesson's file is refused. */
export const lessonReading = {
  'lesson.document': 'a lesson',
  'lesson.unknownField': 'a field that lessons do not have',
  'lesson.knownFields': 'a field of the format',
  'lesson.id': 'small letters, digits and hyphens, a letter first',
  'lesson.measureForm': 'letters and digits, a small letter first',
  'lesson.braces': '{name} in braces',
  'lesson.measureName': 'the name of a measure of the lesson',
  'lesson.measureOrLength': 'the name of a measure of the lesson, or a length such as “20 cm”',
  'lesson.lengthAlone': 'a length such as “20 cm”; measures have no place in what is read before the outcome',
  'lesson.measureAbove': 'the name of a measure that stands above this one',
  'lesson.placeIn': 'a place in {list}, 0 to {most}',
  'lesson.curve': 'a curve of the experiment, 0 to {most}',
  'lesson.overlaps': 'a range that overlaps that of {place}',
  'lesson.above': 'a number above {least}, where the range begins',
  'lesson.once': 'each value once',
  'lesson.apart': 'ranges of which only one can hold',
  'lesson.eitherFamily': 'either a family or designs',
  'lesson.variant': 'the id of a variant of the site, or null',
  'lesson.variable': 'a number that this site has',
  'lesson.value': 'a value that the number can have'
} as const;
