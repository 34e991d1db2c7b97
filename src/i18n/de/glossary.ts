import type { Translation } from '../message';

/** What the terms of the trade mean. */
export const glossary = {
  'glossary.title': 'Fachwörter',
  'glossary.search': 'In den Fachwörtern suchen',
  'glossary.none': 'Kein Fachwort enthält das im Namen oder in der Erklärung.',

  'glossary.loop': 'Induktionsschleife',
  'glossary.loop.text':
    'Einige Windungen isolierten Drahts in einer Fuge der Fahrbahn. Metall darüber senkt ihre Induktivität, und das bemerkt das Gerät.',
  'glossary.turns': 'Windungen',
  'glossary.turns.text':
    'Wie oft der Draht in der Fuge umläuft. Die Induktivität wächst fast mit dem Quadrat der Zahl; üblich sind zwei bis fünf, bei kleinen Schleifen mehr.',
  'glossary.wire': 'Schleifendraht',
  'glossary.wire.text':
    'Kupferlitze mit zäher Isolierung. Der Durchmesser bestimmt den Widerstand und zusammen mit der Isolierung, wie dicht die Windungen liegen.',
  'glossary.slot': 'Fuge',
  'glossary.slot.text':
    'Die in den Belag gesägte Nut für den Draht. Sie muss breit genug sein, dass der Draht hineinpasst und die Vergussmasse ihn umfließt.',
  'glossary.slot-depth': 'Fugentiefe',
  'glossary.slot-depth.text':
    'Von der Oberfläche bis zum Grund der Fuge; dort liegen die Drähte. Tiefer sind sie besser geschützt und sprechen schwächer auf Fahrzeuge an.',
  'glossary.saw-cut': 'Fugenschnitt',
  'glossary.saw-cut.text':
    'Die Linie, an der die Fuge gesägt wird. Ihre Länge bestimmt viel von den Kosten: Sägeblätter, Zeit und Dauer der Sperrung.',
  'glossary.corner-cut': 'Eckschnitt',
  'glossary.corner-cut.text':
    'Ein kurzer schräger Schnitt über die Ecke, damit keine scharfe Kante den Draht scheuert. Angegeben ist, wie weit vor der Ecke er auf jeder Seite beginnt.',
  'glossary.tail': 'Anschlussende',
  'glossary.tail.text':
    'Die beiden Enden des Schleifendrahts, miteinander verdrillt, auf dem Weg zum Schacht. Verdrillt wirken sie nicht selbst als Schleife.',
  'glossary.twisted-pair': 'Verdrilltes Paar',
  'glossary.twisted-pair.text':
    'Zwei umeinandergelegte Drähte. Jeder halbe Schlag hebt auf, was der nächste aufnimmt. Das Paar bringt je Meter eigene Induktivität und Kapazität mit.',
  'glossary.lead-in': 'Zuleitung',
  'glossary.lead-in.text':
    'Das Kabel vom Schacht zum Schaltschrank. Seine Induktivität gehört zum Kreis, aber kein Fahrzeug ändert sie: je länger, desto schwächer die Verstimmung.',
  'glossary.pull-box': 'Schacht',
  'glossary.pull-box.text':
    'Ein Schacht mit Deckel neben der Fahrbahn, in dem die Anschlussenden mit der Zuleitung verbunden werden.',
  'glossary.cabinet': 'Schaltschrank',
  'glossary.cabinet.text':
    'Der Schrank, in dem die Geräte stehen. Er führt Netzspannung: Überlassen Sie ihn Elektrofachkräften.',
  'glossary.conduit': 'Leerrohr',
  'glossary.conduit.text':
    'Ein Rohr für Kabel. Zuleitungen im selben Rohr liegen auf ganzer Länge nebeneinander und wirken ein wenig aufeinander.',
  'glossary.sealant': 'Vergussmasse',
  'glossary.sealant.text':
    'Was die Fuge über den Drähten füllt. Sie muss an beiden Wänden haften, elastisch bleiben und keinen Hohlraum lassen, in dem ein Draht sich bewegen kann.',
  'glossary.backer': 'Haltestücke',
  'glossary.backer.text':
    'Kurze Stücke Schaumrundschnur, in die Fuge gedrückt, die die Drähte unten halten, bis die Vergussmasse fest ist.',
  'glossary.added-resistance': 'Zusatzwiderstand',
  'glossary.added-resistance.text':
    'Widerstand von Verbindungen und Klemmen über den des Drahts hinaus. Eine schlechte Verbindung zeigt sich hier und senkt die Güte.',
  'glossary.circuit': 'Schleifenkreis',
  'glossary.circuit.text':
    'Alle Schleifen, die ein Kanal als eine sieht: die Schleifen, ihre Verschaltung und die Zuleitung.',
  'glossary.series': 'In Reihe',
  'glossary.series.text':
    'Eine Schleife nach der anderen. Die Induktivitäten addieren sich; ein Fahrzeug über einer von zwei gleichen Schleifen ändert das Ganze etwa halb so viel.',
  'glossary.parallel': 'Parallel',
  'glossary.parallel.text':
    'Schleifen nebeneinander an denselben zwei Klemmen. Die Induktivität ist kleiner als die jeder einzelnen.',
  'glossary.winding-sense': 'Wickelsinn',
  'glossary.winding-sense.text':
    'Die Richtung, in der der Strom umläuft. Zwei gegensinnig gewickelte Nachbarn heben vieles auf, was beide von weit her erreicht.',
  'glossary.unit': 'Gerät',
  'glossary.unit.text':
    'Das Gerät im Schaltschrank, das seine Schleifenkreise schwingen lässt und ihre Frequenzen beobachtet. Seine Kanäle arbeiten nacheinander oder alle zugleich.',
  'glossary.channel': 'Kanal',
  'glossary.channel.text': 'Ein Eingang eines Geräts: ein Schleifenkreis, eine Schwelle, ein Ausgang.',
  'glossary.setting': 'Frequenzstufe',
  'glossary.setting.text':
    'Ein Kondensator, den das Gerät zum Kreis schaltet. Mit der Induktivität des Kreises bestimmt er die Frequenz; Nachbarn erhalten verschiedene Stufen, damit sie sich nicht stören.',
  'glossary.measuring-time': 'Messzeit',
  'glossary.measuring-time.text':
    'Wie lange ein Kanal zählt, ehe er urteilt. Länger erkennt kleinere Änderungen und antwortet später.',
  'glossary.threshold': 'Ansprechschwelle',
  'glossary.threshold.text':
    'Um welchen Anteil die Induktivität fallen muss, bis es eine Anforderung gibt. Kleiner findet Motorräder, aber auch die Lkw des Nachbarfahrstreifens.',
  'glossary.release-ratio': 'Abfallverhältnis',
  'glossary.release-ratio.text':
    'Die Anforderung endet, wenn die Verstimmung unter diesen Anteil der Schwelle fällt. Der Abstand verhindert ein Flattern.',
  'glossary.call': 'Anforderung',
  'glossary.call.text': 'Die Meldung am Ausgang, dass ein Fahrzeug da ist.',
  'glossary.presence': 'Dauersignal',
  'glossary.presence.text': 'Ein Ausgang, der so lange meldet, wie ein Fahrzeug über der Schleife ist.',
  'glossary.pulse': 'Impuls',
  'glossary.pulse.text': 'Ein Ausgang, der für jedes Fahrzeug einmal kurz meldet: das Richtige zum Zählen.',
  'glossary.delay': 'Verzögerung',
  'glossary.delay.text':
    'So lange muss ein Fahrzeug bleiben, bis es eine Anforderung gibt. Wer die Schleife nur überquert, fordert nicht an.',
  'glossary.extension': 'Nachlaufzeit',
  'glossary.extension.text': 'So lange bleibt die Anforderung stehen, nachdem das Fahrzeug weg ist.',
  'glossary.longest-presence': 'Längstes Dauersignal',
  'glossary.longest-presence.text':
    'Nach dieser Zeit zählt ein stehendes Fahrzeug als Teil der Fahrbahn, und die Schleife arbeitet wieder für andere.',
  'glossary.recovery': 'Erholung',
  'glossary.recovery.text':
    'Wie bald nach der Abfahrt eines ausgeblendeten Fahrzeugs der Kanal wieder so empfindlich ist wie zuvor.',
  'glossary.inductance': 'Induktivität',
  'glossary.inductance.text':
    'Wie viel magnetischen Fluss ein Strom in der eigenen Schleife erzeugt, in Mikrohenry. Das Gerät beobachtet sie über die Frequenz.',
  'glossary.resistance': 'Widerstand',
  'glossary.resistance.text':
    'Was der Strom in Draht, Verbindungen und Boden verliert. Bei der Betriebsfrequenz ist er größer, als ein Messgerät mit Gleichstrom anzeigt.',
  'glossary.q': 'Güte',
  'glossary.q.text':
    'Der Blindwiderstand durch den Widerstand: wie klar ein Kreis schwingt. Geringe Güte, durch feuchte Verbindungen oder dünnen Draht, lässt die Frequenz wandern.',
  'glossary.self-resonance': 'Eigenresonanz',
  'glossary.self-resonance.text':
    'Die Frequenz, bei der ein Kreis allein mit seiner eigenen Kapazität schwingt. Die Betriebsfrequenz muss deutlich darunter bleiben.',
  'glossary.response': 'ΔL/L',
  'glossary.response.text':
    'Die Änderung der Induktivität durch die Induktivität: die Verstimmung durch ein Fahrzeug. Ein Auto über der Schleife bewirkt einige Prozent, ein Fahrrad einige Hundertstel Prozent.',
  'glossary.beating': 'Schwebung',
  'glossary.beating.text':
    'Zwei benachbarte Kanäle mit fast gleicher Frequenz stören einander im Takt ihrer Differenz: falsche Anforderungen oder gar keine.',
  'glossary.coupling': 'Kopplung k',
  'glossary.coupling.text':
    'Wie viel vom Fluss des einen Kreises durch den anderen geht, von −1 bis 1. Benachbarte Fahrstreifen haben einige Tausendstel.',
  'glossary.quadrupole': 'Quadrupol',
  'glossary.quadrupole.text':
    'Eine Schleife mit einer dritten Fuge längs der Mitte, als Acht gewickelt. Sie sieht weniger vom Nachbarfahrstreifen, aber auch weniger von hohen Fahrzeugen.',
  'glossary.diagonal': 'Diagonalschleife',
  'glossary.diagonal.text':
    'Eine Schleife mit einer Fuge von Ecke zu Ecke, als Acht gewickelt. Ein Fahrrad überfährt einen Draht, wo immer es fährt.',
  'glossary.stop-line': 'Haltlinie',
  'glossary.stop-line.text':
    'Wo Fahrzeuge warten. Schleifen reichen etwas darüber hinaus, für die, die zu weit vorn halten.',
  'glossary.advance-loop': 'Vorfeldschleife',
  'glossary.advance-loop.text':
    'Eine Schleife weit vor der Haltlinie, die dem Signal meldet, wer kommt, solange noch Zeit zu entscheiden ist.',
  'glossary.insulation-test': 'Isolationsmessung',
  'glossary.insulation-test.text':
    'Widerstand zwischen Draht und Erde bei einigen hundert Volt. Eine gute neue Schleife zeigt hundert Megaohm oder mehr, Wasser in einer Verbindung weit weniger.',
  'glossary.plate-height': 'Plattenhöhe',
  'glossary.plate-height.text':
    'Ein Fahrzeug wird als ebene Platten berechnet; so hoch liegt eine davon. Niedrigere wirken stärker. Es ist eine wirksame Höhe, nicht die mit dem Zollstock gemessene.',
  'glossary.mat': 'Bewehrungsmatte',
  'glossary.mat.text':
    'Bewehrungsstäbe im Belag, zu einem Gitter verbunden. Ströme in den Maschen schwächen die Schleife: je weniger Beton dazwischen, desto mehr.',
  'glossary.permittivity': 'Relative Permittivität',
  'glossary.permittivity.text':
    'Um wie viel größer die Kapazität der Drähte im Belag ist als in Luft. Nasser Boden hat eine hohe: Nach Regen sinkt die Frequenz etwas.',
  'glossary.conductivity': 'Leitfähigkeit des Bodens',
  'glossary.conductivity.text':
    'Wie gut der Belag leitet. Salz und Wasser erhöhen sie, und die Schleife verliert Güte.',
  'glossary.tolerance': 'Toleranz',
  'glossary.tolerance.text':
    'Plus oder minus, wie es vor Ort in neunzehn von zwanzig Fällen ausfällt. Aus allen folgt der Bereich, den ein Messgerät zeigen darf.'
} as const satisfies Partial<Translation>;
