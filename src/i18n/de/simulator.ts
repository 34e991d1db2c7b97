import type { Translation } from '../message';

/** Two coupled oscillators in time, for those who want to see a beat. */
export const simulator = {
  'simulator.pair': 'Paar',
  'simulator.pairOf': '{a} + {b}',
  'simulator.invented': 'Zwei gleiche Schleifen, nicht aus dieser Anlage',
  'simulator.inventedWords':
    'Quadrate von 1,8 m mit einem Meter dazwischen, 1,1 kHz auseinander, jedes an einem eigenen Gerät. Mit zwei Schleifenkreisen auf Kanälen, die zugleich laufen, stehen hier die der Zeichnung.',
  'simulator.worst':
    'Schlimmstenfalls {ratio} der Schwelle, {least} auseinander. Hier im Ruhezustand gezeigt.',
  'simulator.worstOverlap':
    'Schlimmstenfalls {ratio} der Schwelle, wo sich die Bänder überlappen. Hier im Ruhezustand gezeigt.',
  'simulator.first': 'Linke Schleife',
  'simulator.second': 'Rechte Schleife',
  'simulator.distance': 'Abstand der Schleifen',
  'simulator.separation': 'Frequenzabstand in Ruhe',
  'simulator.measuringTime': 'Messzeit',
  'simulator.asDrawn': 'Wie gezeichnet',
  'simulator.working': 'Wird berechnet …',
  'simulator.failed': 'Die Simulation ist fehlgeschlagen: {reason}',
  'simulator.none': 'Einer der beiden Schleifenkreise schwingt nicht, also gibt es nichts zu simulieren.',

  'simulator.cycles': 'Frequenz je Schwingung, {count} Schwebungen',
  'simulator.cyclesLocked': 'Frequenz je Schwingung',
  'simulator.amplitude': 'Amplitude, zur Amplitude allein',
  'simulator.readings': 'Ablesungen der Geräte nacheinander',
  'simulator.law': 'nach der Formel, höchstens',
  'simulator.limit': 'die Verschiebung, bei der es anspricht',
  'simulator.trip': '{name} spricht an',
  'simulator.at': '{time}: {a}, {b}',
  'simulator.valueOf': '{name} {value}',

  'simulator.explain':
    'Jeder Schwingkreis gibt dem anderen etwas von seinem Ton, sodass die Frequenz jedes von ihnen mit der Differenz der beiden schwankt: der Schwebung. Ein Gerät, das länger misst als eine Schwebung, mittelt das meiste der Schwankung weg; was bleibt, muss unter der Verschiebung liegen, bei der es anspricht. Fahrzeuge und Temperatur können die beiden näher zusammenbringen als in Ruhe, das Urteil über die Zeichnung kann also schlechter sein: Verkleinern Sie den Frequenzabstand, um es zu sehen.',
  'simulator.strong':
    'Die Kopplung ist stark für diesen Frequenzabstand: k·f ist {share} davon. Die Formel erster Ordnung bleibt hier hinter der Schwankung zurück; nach dem Mitteln gilt sie noch.',
  'simulator.mayLock':
    'Die Kopplung ist stärker als der Frequenzabstand: k·f ist {share} davon. Die Formel gilt nicht mehr; mit etwas mehr ziehen sich die beiden in Gleichtakt.',
  'simulator.locked':
    'Die beiden haben sich in Gleichtakt gezogen und laufen auf einer Frequenz. Nichts schwebt, aber ein Fahrzeug über einer verschiebt beide. Die Formel, die mit einer Schwebung rechnet, gilt hier nicht.',
  'simulator.summary':
    '{a} + {b}: Kopplung {k}, {separation} auseinander. Die Frequenz von {a} schwankt um ±{swing}; sein Gerät liest ±{averaged}, {ratio} seiner Schwelle.',

  'simulator.figures': 'Die Formel und die Simulation',
  'simulator.circuit': 'Schleifenkreis',
  'simulator.frequency': 'Frequenz allein',
  'simulator.quality': 'Q',
  'simulator.swingLaw': 'Schwankung, Formel',
  'simulator.swingSeen': 'Schwankung, gesehen',
  'simulator.averagedLaw': 'Ablesung, Formel, höchstens',
  'simulator.averagedSeen': 'Ablesung, gesehen',
  'simulator.ratio': 'Zur Schwelle',
  'simulator.plusMinus': '±{value}',
  'simulator.coupling':
    'Kopplung k {k}, Gegeninduktivität {mutual}; die mittleren Frequenzen liegen {beat} auseinander.',

  'simulator.table': 'Punkte der Kurven als Tabelle',
  'simulator.tableCycles': 'Frequenz je Schwingung, vom Mittel',
  'simulator.tableReadings': 'Ablesungen, vom Mittel',
  'simulator.tableAmplitude': 'Amplituden',
  'simulator.tableTime': 'Zeit'
} as const satisfies Partial<Translation>;
