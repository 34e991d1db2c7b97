import type { Translation } from '../message';

/** Anforderungen ohne etwas über den Schleifen. */
export const walkNobody = {
  'walk.nobody.beside.ask':
    'Kommen die Anforderungen, wenn etwas wie das Fahrzeug „{vehicle}“ in {lane} vorbeifährt?',
  'walk.nobody.gate.none': 'Hier ist kein Tor gezeichnet.',
  'walk.nobody.gate.far':
    'Das nächste gezeichnete Tor ist {distance} von den Schleifen entfernt: zu weit, um von Schleifen üblicher Größe gesehen zu werden.',
  'walk.nobody.gate.ask': 'Kommen die Anforderungen, während sich das Tor bewegt?',
  'walk.nobody.gate.fact': 'Das nächste Tor ist {distance} von den Schleifen entfernt.',
  'walk.nobody.weather.ask': 'Kommen sie bei Regen oder in den Stunden danach?',
  'walk.nobody.joint.ask':
    'Zuleitung vom Gerät getrennt, Messgerät daran: Ziehen Sie leicht an jeder Klemme und Verbindung. Springt der Widerstand?',
  'walk.nobody.joint.fact': '{circuit} sollte bei {value} bleiben.',
  'walk.nobody.threshold.noRoom':
    'Die Schwelle lässt sich nicht erhöhen: Das Fahrzeug „{vehicle}“ antwortet schlechtestens nur mit ihrem {times}-Fachen.',
  'walk.nobody.threshold.nobody':
    'Von {circuit} ist kein Fahrzeug verlangt, also sagt nichts, wie weit die Schwelle steigen darf.',
  'walk.nobody.threshold.ask':
    'Stellen Sie für einen Tag eine Schwelle von {threshold} statt {before} ein. Hören die Anforderungen auf?',
  'walk.nobody.interference.ask':
    'Läuft die Zuleitung neben Starkstromkabeln oder Antrieben, oder ist ein Teil davon nicht verdrillt?',
  'walk.nobody.interference.fact': 'Die Zuleitung ist {length} lang.',
  'walk.nobody.check':
    'Ein Tag ohne etwas über den Schleifen bringt keine Anforderung, und jedes Fahrzeug noch immer eine.',
  'walk.nobody.end.gate': '{circuit} sieht das sich bewegende Tor.',
  'walk.nobody.end.gate.away':
    'Während der Bewegung darf die Torsteuerung diese Anforderung nur übergehen, wenn etwas anderes schützt, wer im Weg ist: Eine Schleife ist nie die einzige Schutzeinrichtung.',
  'walk.nobody.end.gate.shape':
    'Wenn neu geschnitten wird: einen Meter oder mehr vom Weg des Flügels weg, oder als Quadrupol, dessen Feld eher endet.',
  'walk.nobody.end.gate.check':
    'Lassen Sie das Tor zehnmal öffnen und schließen, ohne etwas über den Schleifen: Es darf keine Anforderung kommen.',
  'walk.nobody.end.joint': 'Eine Verbindung von {circuit} ist lose.',
  'walk.nobody.end.joint.anew':
    'Stellen Sie sie neu her: im Schacht gelötet und vergossen, im Schaltschrank mit Aderendhülse geklemmt.',
  'walk.nobody.end.threshold':
    'Mit {threshold} ist {circuit} empfindlicher, als seine Fahrzeuge es verlangen.',
  'walk.nobody.end.interference': 'Die Zuleitung nimmt auf, was sie nicht soll.',
  'walk.nobody.end.interference.pair':
    'Verwenden Sie ein verdrilltes, geschirmtes Paar bis an die Klemmen, der Schirm nur am Schaltschrank geerdet.',
  'walk.nobody.end.interference.apart':
    'Führen Sie sie in einem eigenen Leerrohr, weg von Starkstromkabeln; wo sie sich treffen, im rechten Winkel kreuzen.'
} as const satisfies Partial<Translation>;
