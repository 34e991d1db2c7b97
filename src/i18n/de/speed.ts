import type { Translation } from '../message';

/** Two loops at a known distance that measure speed and length. */
export const speed = {
  'speed.title': 'Geschwindigkeitspaar',
  'speed.pair': 'Paar',
  'speed.pairOf': '{a} und {b}, {spacing} ({lane})',
  'speed.noPair':
    'Keine zwei Schleifenkreise folgen in einem Fahrstreifen aufeinander. Ein Paar braucht zwei Schleifenkreise, jeden auf einem Kanal, mit ihren Schleifen in einem Fahrstreifen und 0,5 bis 30 m Abstand der Vorderkanten.',
  'speed.driven': 'Gefahrene Geschwindigkeit',
  'speed.drivenTyped': 'Geschwindigkeit, eingegeben',
  'speed.way': 'Fahrtrichtung',
  'speed.forward': 'Wie der Fahrstreifen',
  'speed.backward': 'Ihm entgegen',
  'speed.noVehicle': 'Haken Sie ein Fahrzeug an, um es über das Paar zu fahren.',
  'speed.aim': 'Höchstens erlaubter Fehler',
  'speed.failed': 'Das Paar ließ sich nicht berechnen: {reason}.',

  'speed.chart': '{vehicle}: Verstimmung beider Schleifen über der Zeit',
  'speed.threshold': 'Ansprechschwelle',
  'speed.axis': 'Millisekunden ab dem ersten Ansprechen; −ΔL/L jedes Schleifenkreises.',
  'speed.at': '{time} und {way} nach dem ersten Ansprechen: {a}, {b}',
  'speed.valueOf': '{name} {value}',
  'speed.between': '{time} für {way}',

  'speed.summary':
    '{vehicle}: Zwischen dem Ansprechen liegen {trips}, bei dieser Geschwindigkeit {time}. Das Paar zeigt {speed}, {error} daneben, ±{chance} zufällig, und eine Länge von {length}.',
  'speed.none': '{vehicle}: keine Geschwindigkeit, {why}.',
  'speed.missed': 'nicht erkannt von {circuits}',
  'speed.wrongOrder': 'die zweite Schleife spricht nicht später an als die erste',
  'speed.several': '{circuit} meldet es als {count} Fahrzeuge',
  'speed.plusMinus': '±{value}',
  'speed.spread': '±{usual}, höchstens {worst}',
  'speed.unbounded': 'beliebig',

  'speed.measured': 'Was das Paar zeigt',
  'speed.vehicle': 'Fahrzeug',
  'speed.tripDistance': 'Ansprechabstand',
  'speed.time': 'Zeit',
  'speed.speed': 'Gezeigtes Tempo',
  'speed.error': 'Immer daneben um',
  'speed.chance': 'Zufällig',
  'speed.length': 'Gezeigte Länge',
  'speed.lengthSpread': '{length} {chance}',
  'speed.trueLength': 'Wahre Länge',
  'speed.spacing': 'Abstand fürs Ziel',
  'speed.causes': 'Woher der Fehler der Geschwindigkeit kommt',
  'speed.byThresholds': 'Verschiedene Schwellen',
  'speed.byResponses': 'Verschieden reagierende Schleifen',
  'speed.bySpacing': 'Toleranz des Abstands',
  'speed.byLooking': 'Augenblick der Abfrage',

  'speed.uneven':
    'Die Schwellen sind verschieden, {a} {one} und {b} {other}: Jedes Fahrzeug lässt die beiden an anderen Stellen ansprechen. Stellen Sie beide gleich.',
  'speed.unevenBy':
    'Die Schwellen sind verschieden, {a} {one} und {b} {other}: Das allein verfälscht diese Geschwindigkeit um {error}. Stellen Sie beide gleich.',
  'speed.wanted':
    'Mit {spacing} Abstand der Vorderkanten bleibt der Fehler für alle diese Fahrzeuge in neunzehn von zwanzig Fällen unter {aim}; jetzt liegen sie {now} auseinander.',
  'speed.enough':
    'Die Vorderkanten liegen {now} auseinander: Der Fehler bleibt für alle diese Fahrzeuge in neunzehn von zwanzig Fällen unter {aim}. {spacing} würden genügen.',
  'speed.noSpacing':
    'Eines dieser Fahrzeuge hat keine Geschwindigkeit, also hilft kein Abstand: Bringen Sie es erst über beide Schwellen.',
  'speed.explain':
    'Geschwindigkeit = Abstand der Vorderkanten ÷ Zeit zwischen dem Ansprechen. Länge = Geschwindigkeit × Belegungszeit − Schleifenlänge, als Mittel der beiden Schleifen; das ist gängige Praxis, und es ergibt die Länge des Erfassungsbereichs, nicht die der Karosserie. Ein Gerät bemerkt das Ansprechen bis zu einen Umlauf seiner Kanäle später, in jedem Augenblick gleich wahrscheinlich; ± gilt in neunzehn von zwanzig Fällen.',
  'speed.caution':
    'Ein Paar misst nur gut mit gleichen Schleifen, Windungen, Zuleitungen und Schwellen. Weit auseinanderliegende Schleifen lassen ein Fahrzeug dazwischen Tempo oder Fahrstreifen wechseln oder ein zweites dazukommen. Was es zeigt, ist eine Schätzung für die Verkehrssteuerung, kein Beweis einer Geschwindigkeit.'
} as const satisfies Partial<Translation>;
