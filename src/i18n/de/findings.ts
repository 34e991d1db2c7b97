import type { Translation } from '../message';

/** Was an einem Entwurf falsch ist, warum, und was zu ändern wäre. */
export const findings = {
  'finding.and': ' und ',

  'finding.beating':
    '{a} und {b} laufen zugleich, {distance}, gekoppelt mit k = {k}: eine Welligkeit von {ripple}, das {times} der Ansprechschwelle ({verdict}).',
  'finding.beating.watch': 'beobachten',
  'finding.beating.falseCalls': 'Fehlanforderungen wahrscheinlich',
  'finding.beating.apart': 'mindestens {separation} auseinander',
  'finding.beating.apartLocking':
    'mindestens {separation} auseinander (näher als {lockingRange} können sie einrasten)',
  'finding.beating.overlapping':
    'auf Frequenzen, die sich überlappen, wenn Fahrzeuge vorbeifahren oder die Temperatur sich ändert',
  'finding.beating.times': '{ratio}-Fache',
  'finding.beating.keepApart': 'Halten Sie ihre Frequenzen mindestens {separation} auseinander',
  'finding.beating.noSeparation': 'Kein Abstand innerhalb des üblichen Bandes reicht aus',
  'finding.beating.orMove':
    '{before}. Rücken Sie die Schleifen auseinander oder schließen Sie beide an ein Gerät an, das seine Kanäle nacheinander abfragt.',
  'finding.beating.bySettings':
    '{before}, durch andere Frequenzstufen; oder rücken Sie die Schleifen auseinander, oder schließen Sie beide an ein Gerät an, das seine Kanäle nacheinander abfragt.',
  'finding.beating.clearing': 'Jedes davon behebt es: {ways}.',
  'finding.beating.nothingElse': '{before}. Keine andere einzelne Änderung hilft.',
  'finding.beating.helping': '{before}. Nichts davon behebt es allein, aber es hilft: {ways}.',
  'finding.beating.but': ', aber {names} würde stärker schweben',
  'finding.beating.left': 'das {times} der Schwelle{but}',
  'finding.beating.way.setting': 'Stufe {setting} ({frequency}) für {circuit}: {left}',
  'finding.beating.way.distance': 'die Schleifen {distance} weiter auseinander: {left}',
  'finding.beating.way.winding': '{loop} andersherum gewickelt: {left}',
  'finding.beating.way.scanning': 'beide an {unit}, nacheinander abgefragt: nie zugleich{but}',
  'finding.beating.oneUnit': 'einem Gerät',
  'finding.beating.way.threshold': 'eine Ansprechschwelle von {raised}: {left}{cost}',
  'finding.beating.raised': '{threshold} für {circuit}',
  'finding.beating.loses': ', was Fahrzeuge kostet, die erkannt werden sollen',
  'finding.beating.way.measuringTime': '{units} mit {time} Messzeit: {left}',
  'finding.beating.way.conduit': 'ein eigenes Leerrohr für eine der Zuleitungen: {left}',

  'finding.channelTaken': '{a} und {b} liegen beide auf Kanal {number} von {unit}.',
  'finding.channelTaken.advice':
    'Geben Sie einem der beiden einen anderen Kanal oder fassen Sie ihre Schleifen zu einem Schleifenkreis zusammen.',
  'finding.frequencyBand':
    '{circuit} würde mit {frequency} laufen, außerhalb der üblichen {least} bis {most}.',
  'finding.frequencyBand.advice': 'Wählen Sie eine andere Frequenzstufe oder eine andere Windungszahl.',
  'finding.noOscillation':
    '{circuit} würde auf Stufe {setting} von {unit} ({capacitance}) nicht schwingen: zu stark gedämpft, oder die Zuleitung lässt den Schleifenkreis kapazitiv erscheinen. Die Werte gelten für 50 kHz.',
  'finding.noOscillation.advice':
    'Wählen Sie eine Stufe höherer Frequenz, mehr Windungen oder eine kürzere oder stärkere Zuleitung.',
  'finding.resonance':
    'Eine Schleife von {circuit} ist mit ihrer eigenen Kapazität bei etwa {resonance} in Resonanz, nahe bei ihren {frequency}: Die scheinbare Induktivität hängt vom Wetter ab.',
  'finding.resonance.advice': 'Weniger Windungen oder eine niedrigere Frequenz verwenden.',
  'finding.noCircuit': '{loop} gehört zu keinem Schleifenkreis: Die Werte gelten für 50 kHz.',
  'finding.noCircuit.advice':
    'Schließen Sie die Schleife an einen Schleifenkreis an, um zu sehen, was das Gerät sieht.',
  'finding.noChannel':
    '{circuit} liegt auf keinem Kanal: Die Werte gelten für 50 kHz, und nichts wird mit einer Schwelle verglichen.',
  'finding.noChannel.advice': 'Wählen Sie ein Gerät und einen Kanal.',

  'finding.cover': 'Nur {cover} Überdeckung über dem obersten Draht von {loop}.',
  'finding.cover.out': 'Die Drähte von {loop} ragen {out} aus einer {depth} tiefen Fuge.',
  'finding.cover.advice':
    'Schneiden Sie die Fuge {deeper} tief, für {least} Überdeckung, oder verwenden Sie weniger Windungen oder dünneren Draht.',
  'finding.slotWidth':
    'Der Draht von {loop} ist {diameter} dick und passt nicht in eine {width} breite Fuge.',
  'finding.slotWidth.advice': 'Ein breiteres Sägeblatt oder dünneren Draht verwenden.',

  'finding.inductanceRange': '{circuit} hat {inductance} an den Klemmen; {unit} nimmt {least} bis {most} an.',
  'finding.inductanceRange.low': 'Windungen hinzufügen oder die Schleifen in Reihe schalten.',
  'finding.inductanceRange.high':
    'Windungen wegnehmen, Schleifen parallel schalten oder die Zuleitung kürzen.',

  'finding.lowQ': '{circuit} hat Q = {q} bei {frequency}; unter {least} kann der Oszillator aussetzen.',
  'finding.lowQ.advice': 'Von den {resistance}: {causes}. {remedy}',
  'finding.lowQ.share': '{share} durch {cause}',
  'finding.lowQ.is.copper': 'den Gleichstromwiderstand des Kupfers',
  'finding.lowQ.is.skin': 'den Skineffekt',
  'finding.lowQ.is.proximity': 'den Näheeffekt',
  'finding.lowQ.is.tail': 'die Anschlussenden',
  'finding.lowQ.is.lead-in': 'die Zuleitung',
  'finding.lowQ.is.pavement': 'den Belag',
  'finding.lowQ.is.steel': 'Stahl im Belag',
  'finding.lowQ.is.added': 'den zusätzlichen Widerstand',
  'finding.lowQ.against.copper': 'Dickeren Draht oder mehr Windungen verwenden.',
  'finding.lowQ.against.skin':
    'Mehr Windungen oder eine niedrigere Frequenz verwenden; dickerer Draht hilft weniger, als sein Kupfer erwarten lässt.',
  'finding.lowQ.against.proximity':
    'Einen Draht mit dickerer Isolierung verwenden, der die Windungen auseinanderhält.',
  'finding.lowQ.against.tail': 'Das Anschlussende kürzen oder den Schacht näher setzen.',
  'finding.lowQ.against.lead-in': 'Eine dickere oder kürzere Zuleitung verwenden.',
  'finding.lowQ.against.pavement': 'Die Fuge trocken und vergossen halten; der Belag leitet.',
  'finding.lowQ.against.steel': 'Die Schleife vom Stahl wegrücken oder weniger tief schneiden.',
  'finding.lowQ.against.added': 'Die Verbindung suchen, die den Widerstand ausmacht, und sie löten.',

  'finding.miscounts':
    'Mit dem Verkehr dieser Anlage macht {circuit} {calls} Anforderungen bei {vehicles} Fahrzeugen: {mistakes}.',
  'finding.miscounts.missed': '{number} verpasst',
  'finding.miscounts.merged': '{number} in der vorigen Anforderung aufgegangen',
  'finding.miscounts.split': '{number} mehrfach gemeldet',
  'finding.miscounts.false': '{number} gemeldet, ohne dass jemand da war',
  'finding.miscounts.advice':
    'Öffnen Sie „Überfahrt“, „Anforderungen“: Dort steht jeder Fehler mit seiner Ursache.',

  'finding.nextLane':
    '{vehicle} in der Mitte von {lane} ändert {circuit} um {change}, das {times}-Fache der Schwelle von {threshold}.',
  'finding.nextLane.calls':
    'Rücken Sie die Schleife von diesem Fahrstreifen weg, machen Sie sie schmaler, nehmen Sie eine Quadrupolschleife oder heben Sie die Schwelle so weit an, wie es das kleinste gewünschte Fahrzeug zulässt.',
  'finding.nextLane.near':
    'Fahrzeuge, die sich auf der nahen Seite ihres Fahrstreifens halten, können eine Anforderung auslösen; lassen Sie mehr Abstand oder heben Sie die Schwelle an.',
  'finding.nextLaneEdge':
    '{vehicle} am nahen Rand von {lane} ändert {circuit} um {change}, das {times}-Fache der Schwelle von {threshold}.',

  'finding.missedAtEdge':
    '{circuit} verpasst dieses Fahrzeug, wenn es {offset} neben der Mitte seines Fahrstreifens fährt, noch innerhalb davon: {vehicle}. Dort {response}, die Schwelle liegt bei {threshold}.',
  'finding.missedAtEdge.advice':
    'Senken Sie die Schwelle oder machen Sie die Schleife breiter, wo der Nachbarfahrstreifen es zulässt.',
  'finding.countedTwice':
    '{circuit} erkennt ein einziges Fahrzeug {detections}-mal ({vehicle}): Über {gap} fällt die Verstimmung auf {response}, unter die Abfallschwelle bei {release}.',
  'finding.countedTwice.several':
    'Rücken Sie die Schleifen zusammen, senken Sie die Schwelle oder geben Sie dem Ausgang eine Nachlaufzeit, die die Lücke bei der kleinsten Geschwindigkeit überbrückt.',
  'finding.countedTwice.one':
    'Die Mitte des Fahrzeugs liegt zu hoch für diese Schleife: Senken Sie die Ansprech- oder die Abfallschwelle, machen Sie die Schleife länger oder breiter oder geben Sie dem Ausgang eine Nachlaufzeit, die die Lücke überbrückt.',

  'finding.shape': '{loop} lässt sich nicht schneiden: {what} ist {found}, erwartet {expected}.',
  'finding.shape.advice': 'Berichtigen Sie die Form.',
  'finding.shape.cornerCut.advice': 'Machen Sie den Eckschnitt kleiner oder die Schleife größer.',
  'finding.cornerCut':
    'Eckschnitte von {cut} lassen nur {straight} der {side} langen Seite von {loop} gerade.',
  'finding.cornerCut.advice':
    'Üblich ist etwa ein Sechstel der Seite an jeder Ecke; ein größerer Schnitt macht die Schleife kleiner.',

  'finding.steelNear': 'Stahl im Belag nimmt {circuit} {share} der Induktivität.',
  'finding.steelNear.vehicle':
    'Stahl im Belag nimmt {circuit} {share} der Induktivität und {response} der kleinsten Verstimmung durch: {vehicle}.',
  'finding.steelNear.noDepth':
    'Keine Tiefe bis 2 m bringt den Verlust unter {share}: Rücken Sie die Schleife vom Stahl weg oder verlangen Sie weniger.',
  'finding.steelNear.deeper':
    'Stahl tiefer als {depth} würde weniger als {share} kosten; sonst eine Windung hinzufügen, die Schwelle senken oder die Schleife vom Stahl wegrücken.',
  'finding.steelInSlot': 'Die Fuge von {loop}, {depth} tief, trifft bei {top} auf Stahl.',
  'finding.steelInSlot.advice':
    'Schneiden Sie nicht tiefer, als der Stahl zulässt, oder versetzen Sie die Schleife: Ein durchtrennter Stab schwächt den Belag, und Drähte, die auf Stahl liegen, verlieren den größten Teil ihrer Verstimmung.',

  'finding.undetected':
    '{circuit} erkennt dieses Fahrzeug nicht: {vehicle}. Bestenfalls {best}, die Schwelle liegt bei {threshold}.',
  'finding.undetected.advice':
    'Senken Sie die Schwelle, legen Sie einen Draht näher an die Fahrlinie, fügen Sie eine Windung hinzu, kürzen Sie die Zuleitung oder wählen Sie eine Form, deren Drähte näher beieinander liegen.',
  'finding.detectedInPart':
    '{circuit} verpasst dieses Fahrzeug auf einem Teil des Fahrstreifens: {vehicle}. Von {worst} auf der schlechtesten bis {best} auf der besten Fahrlinie, die Schwelle liegt bei {threshold}.',
  'finding.detectedInPart.advice':
    'Senken Sie die Schwelle, machen Sie die Schleife breiter oder wählen Sie eine Form mit einem Draht unter jeder Fahrlinie, etwa eine Diagonal- oder eine Quadrupolschleife.',

  'finding.turns.few': {
    one: '{count} Windung ist ungewöhnlich wenig für {loop}: Die Schleife allein hat {inductance}.',
    other: '{count} Windungen sind ungewöhnlich wenig für {loop}: Die Schleife allein hat {inductance}.'
  },
  'finding.turns.many': {
    one: '{count} Windung ist ungewöhnlich viel für {loop}: Die Schleife allein hat {inductance}.',
    other: '{count} Windungen sind ungewöhnlich viel für {loop}: Die Schleife allein hat {inductance}.'
  },
  'finding.turns.size':
    'Ändern Sie die Größe oder schalten Sie die Schleife mit einer anderen in Reihe oder parallel.',
  'finding.turns.least': 'Etwa {turns} würden sie auf mindestens {inductance} bringen.',
  'finding.turns.most': 'Etwa {turns} würden sie auf höchstens {inductance} bringen.',

  'finding.vehicleTooLow':
    'Was dieses Fahrzeug mit einer Schleife macht, liegt außerhalb des Modells: {vehicle}. Trauen Sie den Werten nicht.{plate}',
  'finding.vehicleTooLow.plate':
    ' Eine Platte von {width} × {length} in {height} Höhe ist zu groß für ihre Höhe.',
  'finding.vehicleTooLow.advice':
    'Geben Sie der Platte ihre wirksame Höhe, die über der Bodenfreiheit eines wirklichen Fahrzeugbodens liegt, oder machen Sie sie kleiner.'
} as const satisfies Partial<Translation>;
