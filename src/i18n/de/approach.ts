import type { Translation } from '../message';

/** Advance loops and stopping distances from the speed on an approach. */
export const approach = {
  'approach.title': 'Lage nach Geschwindigkeit',
  'approach.noLane':
    'Zeichnen Sie einen Fahrstreifen mit einer Haltlinie darüber: Vorfeldschleifen liegen vor dieser Linie.',
  'approach.lane': 'Fahrstreifen',
  'approach.speed': '85-%-Geschwindigkeit',
  'approach.slow': 'Untere Geschwindigkeit',
  'approach.from': 'Bereich beginnt',
  'approach.to': 'Bereich endet',
  'approach.extension': 'Nachlaufzeit',
  'approach.reaction': 'Reaktionszeit',
  'approach.brakingMetres': 'Bremsen, m/s²',
  'approach.brakingFeet': 'Bremsen, ft/s²',
  'approach.grade': 'Neigung, bergauf +',

  'approach.place': 'Diese Schleifen setzen',
  'approach.step': {
    one: '{count} Vorfeldschleife auf {lane} setzen',
    other: '{count} Vorfeldschleifen auf {lane} setzen'
  },
  'approach.refused':
    'Die Schleifen lassen sich nicht setzen: Die Anlage ist voll, oder sie lägen außerhalb des Plans.',
  'approach.noLine': 'Quer zu diesem Fahrstreifen liegt keine Haltlinie: Sein Ende steht dafür.',
  'approach.fromLine': 'Abstände zählen ab der Haltlinie auf diesem Fahrstreifen.',
  'approach.there':
    'Diese Schleifen liegen auf dem Plan; ihre Zuleitungen sind so lang wie die zuletzt gezeichnete, prüfen Sie sie also.',
  'approach.longer':
    'Der Fahrstreifen ist zu kurz für die erste Schleife: Er wird an seinem Anfang um {missing} verlängert.',

  'approach.metres': '{value}\u00a0m',
  'approach.feet': '{value}\u00a0ft',
  'approach.mph': '{value}\u00a0mph',
  'approach.seconds': '{value}\u00a0s',
  'approach.unbounded': 'ohne Ende',
  'approach.axis': 'Abstand vor der Haltlinie; Verkehr von links nach rechts.',
  'approach.pointed': '{distance} vor der Linie: {time} bei der 85-%-Geschwindigkeit, {slow} bei der unteren',
  'approach.zoneAt': 'Bereich bei {speed}: {from} bis {to}',
  'approach.bar': '{text} {distance}',

  'approach.zoneIs': 'Der Entscheidungsbereich liegt {from} bis {to} vor der Linie.',
  'approach.tooMany':
    'Keine sinnvolle Zahl von Schleifen hält die Anforderung eines langsamen Fahrzeugs darüber hinweg: Geben Sie eine längere Nachlaufzeit oder eine höhere untere Geschwindigkeit an.',
  'approach.loopsAre': {
    one: 'Eine Schleife, ihre Vorderkante {distances} vor der Linie.',
    other: '{count} Schleifen, ihre Vorderkanten {distances} vor der Linie.'
  },
  'approach.carried': 'Die Anforderung eines langsamen Fahrzeugs wird bis {to} vor der Linie gehalten.',
  'approach.zone': 'Entscheidungsbereich',
  'approach.stopping': 'Anhalteweg bei Gelb',
  'approach.sight': 'Haltesichtweite',
  'approach.yellow': 'Zugehöriges Gelb, 3 bis 6 s',
  'approach.yellowInterval': 'Gelb',
  'approach.reach': 'Größter Abstand der Vorderkanten',
  'approach.headway': 'Bug zu Bug, Grün gehalten bis',
  'approach.passage': 'Zeitlücke, nur eine solche Schleife',

  'approach.loops': 'Vorfeldschleifen',
  'approach.loop': 'Schleife',
  'approach.edge': 'Vorderkante vor der Linie',
  'approach.timeAt': 'Bei {speed}',

  'approach.published': 'Veröffentlichte Werte neben denen dieses Programms',
  'approach.publishedSpeed': 'Geschwindigkeit',
  'approach.inPrint': 'veröffentlicht',
  'approach.here': 'hier',
  'approach.passages': 'Zeitlücke eines Bereichs an der Haltlinie, 25 bis 55 mph, 3 s von Bug zu Bug',
  'approach.passageZone': 'Länge des Bereichs',
  'approach.sources':
    'Quellen: Entscheidungsbereich {zone}; Gelb {yellow}; Zeitlücke {passage}; Haltesichtweite {sight}. Jede wurde in einer Wiedergabe gelesen, die Dokument und Stelle nennt, nicht im Dokument selbst. Der Bereich ist an beiden Enden auf ganze 5 ft erweitert, die Haltesichtweite auf 5 ft aufgerundet, wie in den veröffentlichten Werten.',
  'approach.stepped':
    'Eine andere veröffentlichte Regel, FHWA-HOP-08-024, Seite 4-25: eine Schleife, wo der Bereich für die 85-%-Geschwindigkeit beginnt, und eine für je 10 mph weniger, meist drei oder vier. Für {speed}: {distances}.',
  'approach.formulas':
    'Bereich = Geschwindigkeit × Zeit. Anhalteweg = v·t + v²/(2·(a + g·Neigung)); Gelb = Anhalteweg ÷ v, mit 1,0 s und 10 ft/s², wo nichts anderes eingegeben ist; Haltesichtweite mit 2,5 s und 11,2 ft/s². Zeitlücke = 3 s − (20 ft + Bereich) ÷ mittlere Geschwindigkeit, diese gleich 0,88 der 85-%-Geschwindigkeit.',
  'approach.rule':
    'Die erste Schleife liegt, wo der Bereich beginnt. Ein Fahrzeug mit der unteren Geschwindigkeit muss die nächste Schleife erreichen, ehe seine Anforderung endet, also liegen zwei Vorderkanten höchstens (Schleifenlänge + untere Geschwindigkeit × Nachlaufzeit) auseinander; die Länge des Fahrzeugs zählt nicht, damit auch ein Motorrad seine Anforderung behält. Die letzte Schleife liegt, wo der Bereich endet, oder näher, wo ein langsames Fahrzeug seine Anforderung vor dem Ende seines eigenen Bereichs verlöre. Die Nachlaufzeit darf vom Gerät oder vom Steuergerät kommen, nicht von beiden.',
  'approach.caution':
    'Ein erster Entwurf, kein Signalzeitenplan: Örtliche Praxis, die Regeln der Behörde und das Urteil eines Ingenieurs entscheiden. Ein Grün, das mit seiner Höchstdauer endet, schützt niemanden im Bereich, wie viele Schleifen auch liegen.'
} as const satisfies Partial<Translation>;
