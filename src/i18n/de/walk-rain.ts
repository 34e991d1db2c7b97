import type { Translation } from '../message';

/** Geht, bis es regnet. */
export const walkRain = {
  'walk.rain.pavement':
    'Von trockener zu nasser Fahrbahn wandert {circuit} von {dry} auf {wet}. Das entspricht {change} ΔL/L, {share} der Schwelle; es kommt langsam, und ein Gerät folgt.',
  'walk.rain.frequency.ask': 'Bei Nässe, ohne etwas über den Schleifen: Welche Frequenz zeigt das Gerät?',
  'walk.rain.frequency.within': '{low} bis {high}, ruhig',
  'walk.rain.frequency.beyond': 'Außerhalb, oder sie springt',
  'walk.rain.frequency.unknown': 'Das Gerät zeigt keine Frequenz',
  'walk.rain.between.ask':
    'Zuleitung vom Gerät getrennt und ihre Verbindung im Schacht offen: Welche Isolation liegt zwischen ihren beiden Adern?',
  'walk.rain.between.skip': 'Die Verbindung bleibt vorerst zu',
  'walk.rain.box.ask': 'Steht Wasser im Schacht, sodass Verbindungen darin liegen?',
  'walk.rain.slot.ask': 'Ist irgendwo entlang der Fugen Vergussmasse gerissen, abgelöst oder fehlt sie?',
  'walk.rain.cabinet.ask': 'Sind Klemmen, Ableiter oder der Sockel des Geräts feucht oder korrodiert?',
  'walk.rain.beat.far':
    'Regen verschiebt die Frequenz um {shift}; der nächste Nachbar, {other}, bleibt {separation} entfernt.',
  'walk.rain.beat.ask': 'Schalten Sie bei Nässe den Kanal von {other} für einige Minuten ab. Ist es behoben?',
  'walk.rain.beat.shift': 'Regen verschiebt diese Frequenz um {shift}.',
  'walk.rain.check':
    'Gießen Sie Wasser über Verbindungen und Fugen, warten Sie eine halbe Stunde und messen Sie die Isolation noch einmal.',
  'walk.rain.end.cable': 'Die beiden Adern der Zuleitung haben Schluss durch Feuchte.',
  'walk.rain.end.box': 'Verbindungen stehen im Wasser.',
  'walk.rain.end.box.drain':
    'Geben Sie dem Schacht einen Ablauf oder hängen Sie die Verbindungen über den Wasserstand.',
  'walk.rain.end.slot': 'Wasser dringt in eine Fuge ein.',
  'walk.rain.end.slot.seal': 'Reinigen, trocknen und neu vergießen, solange die Isolation noch gut ist.',
  'walk.rain.end.cabinet': 'Wasser ist im Schaltschrank.',
  'walk.rain.end.cabinet.dry':
    'Kabeleinführungen abdichten, nach Türdichtung und Heizung sehen, Klemmen reinigen und trocknen, durchlässige Ableiter tauschen.'
} as const satisfies Partial<Translation>;
