import type { Translation } from '../message';

/** Was jeder Weg durch eine Beschwerde sagt. */
export const walkShared = {
  'walk.answer.yes': 'Ja',
  'walk.answer.no': 'Nein',
  'walk.loop.expected':
    '{circuit} sollte {value} zeigen; mit einem üblichen Messgerät sind {low} bis {high} plausibel.',
  'walk.loop.expectedWith': '{circuit} sollte {value} zeigen; mit {meter} sind {low} bis {high} plausibel.',
  'walk.loop.meterAt':
    'Das gilt für ein Messgerät, das mit {frequency} misst; bei anderer Frequenz ist es ein anderer Wert.',
  'walk.loop.capacitive':
    'Bei den {frequency} des Messgeräts ist {circuit} keine Induktivität mehr: Die Kapazität der Zuleitung überwiegt.',
  'walk.loop.lastRead': 'Früher abgelesen: {value}. {day}',
  'walk.loop.lastOver': 'Früher abgelesen: über Messbereich. {day}',
  'walk.loop.fits': '{low} bis {high}',
  'walk.loop.less': 'Weniger als {low}',
  'walk.loop.more': 'Mehr als {high}',
  'walk.loop.open': 'Über Messbereich: keine Verbindung',
  'walk.loop.noMeter': 'Dafür habe ich kein Messgerät',
  'walk.loop.resistance.ask':
    'Nehmen Sie die Zuleitung vom Gerät ab. Welchen Gleichstromwiderstand hat sie am Schaltschrank?',
  'walk.loop.inductance.ask': 'Zuleitung weiter vom Gerät getrennt: Welche Induktivität hat sie?',
  'walk.loop.insulation.ask':
    'Zuleitung weiter vom Gerät getrennt: Welche Isolation haben beide Adern gegen Erde?',
  'walk.loop.insulation.limit': 'Mindestens {limit}: die strengste Grenze, die für diese Anlage gewählt ist.',
  'walk.loop.insulation.good': '{limit} oder mehr',
  'walk.loop.insulation.bad': 'Weniger als {limit}',
  'walk.loop.leak.ask':
    'Öffnen Sie die Verbindung im Schacht und prüfen Sie beide Seiten für sich. Welche Seite hat weniger als {limit}?',
  'walk.loop.leak.loop': 'Die Schleife mit ihrem Anschlussende',
  'walk.loop.leak.leadIn': 'Die Zuleitung',
  'walk.loop.leak.splice': 'Keine: Es war die Verbindung',
  'walk.loop.frequency':
    'Ohne etwas über den Schleifen sollte {circuit} mit {value} laufen; {low} bis {high} sind plausibel.',
  'walk.check.sound':
    'Danach zeigt {circuit} am Schaltschrank {low} bis {high}, und das Gerät läuft ohne etwas über den Schleifen mit etwa {frequency}.',
  'walk.check.insulation':
    'Danach haben Schleife, Zuleitung und beide zusammen {limit} oder mehr, auch wenn alles nass ist.',
  'walk.end.noChannel':
    '{circuit} liegt hier auf keinem Kanal, also gibt es weder Schwelle noch Stufe noch Ausgang, mit denen sich schließen ließe.',
  'walk.end.noChannel.choose': 'Wählen Sie bei den Angaben Gerät und Kanal und kommen Sie dann zurück.',
  'walk.end.unit': 'Die Schleifen von {circuit} sind in Ordnung: {unit} oder sein Kanal ist defekt.',
  'walk.end.unit.replace':
    '{unit} tauschen oder auf einen anderen Kanal gehen; Kanal {number} einstellen wie hier: Schwelle {threshold}, Stufe {setting}.',
  'walk.end.unit.replaceGiven':
    '{unit} tauschen oder auf einen anderen Kanal gehen; Kanal {number} wie hier auf die Schwelle {threshold} einstellen.',
  'walk.end.unexplained': 'Nichts davon erklärt es.',
  'walk.end.unexplained.readings':
    'Tragen Sie die Messwerte unter Messwerte ein: Ursachen wägt Fehler ab, auch zwei zugleich, die keine einzelne Frage findet.',
  'walk.end.unexplained.log':
    'Notieren Sie, wann es auftritt, mit Wetter, Verkehr und dem, was die anderen Kanäle tun.',
  'walk.end.elsewhere': 'An den Klemmen von {circuit} hängt eine andere Schleife.',
  'walk.end.elsewhere.trace':
    'Verfolgen Sie die Zuleitungen von den Schächten zum Schaltschrank und schließen Sie hier {loops} an. Beschriften Sie beide Enden.',
  'walk.end.elsewhere.check': 'Ein Fahrzeug auf {loops} löst {circuit} aus und keinen anderen.',
  'walk.end.open': '{circuit} ist unterbrochen: Ein Draht, eine Verbindung oder eine Klemme hat sich gelöst.',
  'walk.end.open.joints':
    'Sehen Sie zuerst nach Klemmen und Verbindungen: Sie lösen sich öfter, als Draht bricht.',
  'walk.end.open.half':
    'Messen Sie die Schleifen im Schacht bei abgetrennter Zuleitung. Auch dort unterbrochen: Es ist eine Schleife oder ihr Anschlussende. Sonst sind es die {length} Zuleitung.',
  'walk.end.short': 'Etwas überbrückt die Drähte von {circuit} diesseits der Schleife.',
  'walk.end.short.leadIn':
    'Die Zuleitung allein hat {resistance} auf {length}: Die Hälfte dieses Widerstands weist auf die Hälfte ihrer Länge.',
  'walk.end.short.distance':
    'Tragen Sie den Widerstand unter Messwerte ein: Ursachen sagt, wie weit vom Schaltschrank der Kurzschluss liegt, und zeigt die Stelle.',
  'walk.end.short.splice':
    'Öffnen Sie die Verbindung im Schacht: Eine Zuleitung, die jetzt über dem Messbereich liegt, ist in Ordnung.',
  'walk.end.splice': 'Eine Verbindung oder Klemme von {circuit} hat mehr Widerstand, als sie sollte.',
  'walk.end.splice.move':
    'Bewegen Sie jede Verbindung und Klemme bei angeschlossenem Messgerät: An der schlechten springt der Wert. Stellen Sie diese neu her und vergießen Sie sie.',
  'walk.end.splice.wire':
    'Alle Verbindungen sind gut und der Wert bleibt: Der Draht ist dünner oder länger als gezeichnet. Berichtigen Sie die Zeichnung.',
  'walk.end.turns':
    '{circuit} hat weniger Induktivität als gewickelt: Windungen sind kurzgeschlossen oder fehlen, oder Stahl liegt nahe.',
  'walk.end.turns.causes':
    'Tragen Sie die Induktivität unter Messwerte ein: Ursachen wägt sie gegeneinander ab und sagt, wie viele Windungen.',
  'walk.end.turns.steel': 'Suchen Sie nach Stahl, der nicht da war: Deckel, Platten, Bewehrung.',
  'walk.end.turns.anew':
    'Kurzgeschlossene Windungen lassen sich in der Fuge nicht reparieren: Die Schleife muss neu geschnitten werden.',
  'walk.end.more':
    '{circuit} hat mehr Induktivität als gezeichnet: Mehr Windungen, eine weitere Schleife oder eine längere Zuleitung hängt an diesen Klemmen.',
  'walk.end.more.which':
    'Fahren Sie nacheinander über jede Schleife und sehen Sie, auf welche dieser Kanal anspricht.',
  'walk.end.more.drawing':
    'Wo die Fahrbahn recht hat und die Zeichnung nicht, berichtigen Sie die Zeichnung: Alle Werte folgen.',
  'walk.end.leak.loop': 'Wasser erreicht das Kupfer einer Schleife oder ihres Anschlussendes.',
  'walk.end.leak.loop.slot':
    'Suchen Sie entlang der Fuge nach gerissener oder abgelöster Vergussmasse und nach sichtbarem Draht.',
  'walk.end.leak.loop.anew':
    'Verletzte Isolation lässt sich in der Fuge nicht dauerhaft reparieren: Planen Sie, die Schleife neu zu schneiden.',
  'walk.end.leak.leadIn': 'Die Isolation der Zuleitung ist verletzt.',
  'walk.end.leak.leadIn.replace':
    'Tauschen Sie die Zuleitung von {length} oder das Stück zwischen zwei Schächten, das für sich einen niedrigen Wert hat.',
  'walk.end.leak.splice': 'Die Verbindung im Schacht ist nass.',
  'walk.end.leak.splice.anew':
    'Stellen Sie die Verbindung neu her, gelötet, in einer vergossenen Muffe, und befestigen Sie sie oben im Schacht.',
  'walk.swap.ask':
    'Legen Sie {circuit} auf einen anderen Kanal oder setzen Sie ein gutes Gerät an die Stelle von {unit}, ohne etwas über den Schleifen. Ist es behoben?',
  'walk.swap.free': 'Freie Kanäle an {unit}: {count}.',
  'walk.swap.full':
    'Alle Kanäle von {unit} sind belegt: Nehmen Sie den eines Fahrstreifens, der entbehrt werden kann.',
  'walk.threshold.raise': 'Erhöhen Sie die Schwelle von {circuit} von {before} auf {threshold}.',
  'walk.threshold.room':
    'Erhöhen Sie die Schwelle von {circuit} von {before} auf {threshold}: Das schwächste verlangte Fahrzeug, „{vehicle}“, antwortet immer noch mit dem {times}-Fachen.',
  'walk.threshold.noRoom':
    'Keine Schwelle hilft: Bei den {threshold}, die {circuit} bräuchte, geht das Fahrzeug „{vehicle}“ verloren, das schlechtestens mit {response} antwortet.',
  'walk.beat.none': 'Kein anderer Schleifenkreis läuft zugleich mit {circuit}: Nichts kann mit ihm schweben.',
  'walk.beat.weak': '{other} stört {circuit} mit {share} seiner Schwelle: zu wenig, um zu zählen.',
  'walk.beat.fact':
    '{other}: eine Welligkeit von {share} der Schwelle von {circuit}, Frequenzen {separation} auseinander.',
  'walk.beat.overlap':
    '{other}: eine Welligkeit von {share} der Schwelle von {circuit}, auf Frequenzen, die sich überlappen, wenn Fahrzeuge fahren oder das Wetter wechselt.',
  'walk.beat.strong':
    '{other}: eine Welligkeit vom {times}-Fachen der Schwelle von {circuit}, Frequenzen {separation} auseinander.',
  'walk.beat.strongOverlap':
    '{other}: eine Welligkeit vom {times}-Fachen der Schwelle von {circuit}, auf Frequenzen, die sich überlappen, wenn Fahrzeuge fahren oder das Wetter wechselt.',
  'walk.beat.ask':
    'Schalten Sie jeden dieser Kanäle für einige Minuten ab, einen nach dem anderen. Bei welchem hört es auf?',
  'walk.beat.off': 'Mit {other} aus',
  'walk.beat.goesOn': 'Es geht weiter',
  'walk.end.beat':
    '{other} schwebt mit {circuit}: zwei Frequenzen, die für ihre Kopplung zu nahe beieinander liegen.',
  'walk.end.beat.check':
    'Lassen Sie {other} eine Stunde lang an, ohne etwas über den Schleifen: Es darf keine Anforderung kommen.',
  'walk.remedy.setting':
    'Stufe {setting} statt {before} für {circuit}: dann in Ruhe {apart} von {other} entfernt, und {share} der Schwelle bleiben.',
  'walk.remedy.settingFirst':
    'Stufe {setting} für {circuit}: dann in Ruhe {apart} von {other} entfernt, und {share} der Schwelle bleiben.',
  'walk.remedy.distance':
    'Wenn neu geschnitten wird: Die Schleifen von {circuit} um {distance} weiter entfernt lassen {share} der Schwelle.',
  'walk.remedy.winding':
    'Vertauschen Sie die beiden Enden von {loop} an der Verbindung: {share} der Schwelle bleiben.',
  'walk.remedy.scanning':
    'Beide an {unit} anschließen, das seine Kanäle nacheinander abfragt: Dann laufen sie nie zugleich.',
  'walk.remedy.scanningNew':
    'Beide an ein Gerät anschließen, das seine Kanäle nacheinander abfragt: Dann laufen sie nie zugleich.',
  'walk.remedy.threshold':
    'Schwelle von {circuit} auf {threshold} erhöhen: {share} davon bleiben, und jedes verlangte Fahrzeug wird noch erkannt.',
  'walk.remedy.thresholdLoses':
    'Eine Schwelle von {threshold} für {circuit} lässt {share} davon, verliert aber: {vehicles}.',
  'walk.remedy.measuring': '{units} mit {time} Messzeit: {share} der Schwelle bleiben.',
  'walk.remedy.conduit': 'Ein eigenes Leerrohr für eine der Zuleitungen: {share} der Schwelle bleiben.',
  'walk.remedy.none':
    'Keine einzelne Änderung behebt es. Legen Sie die beiden Frequenzen so weit auseinander, wie die Stufen es erlauben, oder schließen Sie beide an ein Gerät an, das nacheinander abfragt.',
  'walk.beside.none': 'Neben {circuit} verläuft kein Fahrstreifen mit eigenem Verkehr.',
  'walk.beside.weak':
    'Das Fahrzeug „{vehicle}“ in {lane} verstimmt {circuit} um {response}, {share} seiner Schwelle: zu wenig.',
  'walk.beside.fact':
    'Das Fahrzeug „{vehicle}“ in der Mitte von {lane} verstimmt {circuit} um {response}, {share} seiner Schwelle.',
  'walk.end.beside': '{circuit} sieht den Verkehr von {lane}.',
  'walk.end.beside.delay':
    'Eine Verzögerung hält fern, was nur vorbeifährt; der Schleifenkreis {circuit} hat jetzt {delay}.',
  'walk.end.beside.anew':
    'Wenn neu geschnitten wird: schmaler, weiter weg von diesem Fahrstreifen oder als Quadrupol, dessen Feld eher endet.',
  'walk.end.beside.check':
    'Lassen Sie das Fahrzeug „{vehicle}“ zehnmal durch {lane} fahren, auch nahe am Rand: Es darf keine Anforderung kommen.'
} as const satisfies Partial<Translation>;
