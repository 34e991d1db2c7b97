export const lessonReading = {
  'lesson.document': 'eine Lektion',
  'lesson.unknownField': 'ein Feld, das Lektionen nicht haben',
  'lesson.knownFields': 'ein Feld des Formats',
  'lesson.id': 'Kleinbuchstaben, Ziffern und Bindestriche, zuerst ein Buchstabe',
  'lesson.measureForm': 'Buchstaben und Ziffern, zuerst ein Kleinbuchstabe',
  'lesson.braces': '{name} in geschweiften Klammern',
  'lesson.measureName': 'der Name eines Messwerts der Lektion',
  'lesson.measureOrLength': 'der Name eines Messwerts der Lektion oder eine Länge wie „20 cm“',
  'lesson.lengthAlone':
    'eine Länge wie „20 cm“; Messwerte gehören nicht in das, was vor dem Ergebnis gelesen wird',
  'lesson.measureAbove': 'der Name eines Messwerts, der über diesem steht',
  'lesson.placeIn': 'eine Stelle in {list}, 0 bis {most}',
  'lesson.curve': 'eine Kurve des Versuchs, 0 bis {most}',
  'lesson.overlaps': 'ein Bereich, der sich mit dem von {place} überschneidet',
  'lesson.above': 'eine Zahl über {least}, wo der Bereich beginnt',
  'lesson.once': 'jeden Wert einmal',
  'lesson.apart': 'Bereiche, von denen nur einer zutreffen kann',
  'lesson.eitherFamily': 'entweder eine Kurvenschar oder Entwürfe',
  'lesson.variant': 'die Kennung einer Variante der Anlage oder null',
  'lesson.variable': 'eine Größe, die es in dieser Anlage gibt',
  'lesson.value': 'ein Wert, den die Größe haben kann'
} as const;
