import type { Translation } from '../message';

/** Zwei Schleifenkreise, die zusammen anfordern. */
export const walkLanes = {
  'walk.lanes.which.ask': 'Welcher Schleifenkreis fordert zusammen mit {circuit} an?',
  'walk.lanes.which.only': 'Neben {circuit} liegt nur {other} auf einem Kanal: Es muss dieser sein.',
  'walk.lanes.which.other': '{other}',
  'walk.lanes.who.ask': 'Was ist auf der Fahrbahn, wenn {circuit} und {other} zusammen anfordern?',
  'walk.lanes.who.one': 'Ein Fahrzeug in einem Fahrstreifen',
  'walk.lanes.who.across': 'Ein Fahrzeug über beiden Fahrstreifen',
  'walk.lanes.who.nobody': 'Nichts',
  'walk.lanes.pickUp.none': 'Weder {circuit} noch {other} hat den Fahrstreifen des anderen in Reichweite.',
  'walk.lanes.pickUp.ask':
    'Fahren Sie mit etwas wie dem Fahrzeug „{vehicle}“ allein durch {lane}. Fordert {circuit} jedes Mal an?',
  'walk.lanes.apart.ask':
    'Nehmen Sie die Zuleitung von {other} von den Klemmen. Löst ein Fahrzeug auf den Schleifen von {other} immer noch {circuit} aus?',
  'walk.lanes.between.ask':
    'Beide Zuleitungen vom Gerät getrennt: Welche Isolation liegt zwischen der von {circuit} und der von {other}?',
  'walk.lanes.beat.never': '{circuit} und {other} laufen nie zugleich: Sie können nicht schweben.',
  'walk.lanes.beat.ask':
    'Schalten Sie den Kanal von {other} für einige Minuten ab. Hören die Anforderungen von {circuit} auf?',
  'walk.lanes.beat.conduit': 'Gemeinsame Leerrohre machen {share} ihrer Kopplung aus.',
  'walk.lanes.outputs.ask':
    'Enden die Ausgänge von {circuit} und {other} an einem Eingang, oder berühren sie sich unterwegs?',
  'walk.lanes.check': 'Ein Fahrzeug nacheinander auf jeder Schleife löst nur deren Schleifenkreis aus.',
  'walk.lanes.end.alone': '{circuit} ist hier der einzige Schleifenkreis auf einem Kanal.',
  'walk.lanes.end.alone.draw':
    'Zeichnen Sie den anderen Schleifenkreis und geben Sie ihm einen Kanal; oder wählen Sie „Anforderungen ohne Fahrzeug“.',
  'walk.lanes.end.across': 'Beide haben recht: Ein Fahrzeug ist über beiden.',
  'walk.lanes.end.across.markings':
    'Sehen Sie nach, warum dort gefahren wird: Markierung, Parken, ein zu schmaler Fahrstreifen oder ein zu enger Bogen.',
  'walk.lanes.end.across.narrower':
    'Schmalere Schleifen, weiter weg von der Linie zwischen den Fahrstreifen, sehen weniger davon.',
  'walk.lanes.end.crossed': 'Schleifen von {other} hängen an den Klemmen von {circuit}.',
  'walk.lanes.end.crossed.trace':
    'Verfolgen Sie beide Zuleitungen vom Schacht zum Schaltschrank, ordnen Sie die Adern und beschriften Sie beide Enden.',
  'walk.lanes.end.touching': 'Die Drähte von {circuit} und {other} berühren sich, oder Wasser verbindet sie.',
  'walk.lanes.end.touching.splices':
    'Sehen Sie nach den Verbindungen im gemeinsamen Schacht: beide neu herstellen, vergossen und getrennt.',
  'walk.lanes.end.touching.cable':
    'In einem Kabel: ein eigenes Paar für jeden Schleifenkreis, nie je einen Draht aus zweien.',
  'walk.lanes.end.outputs': 'Die Ausgänge sind verbunden, nicht die Schleifen.',
  'walk.lanes.end.outputs.separate':
    'Trennen Sie sie an den Eingängen des Steuergeräts, oder lassen Sie das Steuergerät sie unterscheiden.'
} as const satisfies Partial<Translation>;
