import type { Translation } from '../message';

/** What may be wrong, what to do about it, and what to measure next. */
export const causes = {
  'causes.kind.nothing wrong': 'Nichts falsch',
  'causes.kind.shorted turns': 'Kurzgeschlossene Windungen',
  'causes.kind.wrong turns': 'Andere Windungszahl',
  'causes.kind.wrong wire': 'Anderer Draht',
  'causes.kind.open': 'Unterbrechung: ein Draht oder eine Verbindung ist offen',
  'causes.kind.resistive splice': 'Verbindung mit Widerstand',
  'causes.kind.short at splice': 'Kurzschluss an der Verbindung',
  'causes.kind.short in lead-in': 'Kurzschluss in der Zuleitung',
  'causes.kind.reversed loop': 'Eine Schleife verpolt',
  'causes.kind.missing loop': 'Eine Schleife ausgelassen',
  'causes.kind.parallel for series': 'Schleifen parallel, die in Reihe gehören',
  'causes.kind.series for parallel': 'Schleifen in Reihe, die parallel gehören',
  'causes.kind.wet splice': 'Wasser in einer Verbindung',
  'causes.kind.cut insulation': 'Isolation verletzt',
  'causes.kind.steel near': 'Stahl nahe den Drähten',
  'causes.kind.other loop': 'Schleifen eines anderen Kreises an diesen Klemmen',
  'causes.kind.longer lead-in': 'Zuleitung länger als gezeichnet',
  'causes.kind.wrong setting': 'Gerät anders eingestellt',
  'causes.kind.wrong meter frequency': 'Messgerät mit anderer Messfrequenz',
  'causes.kind.something else': 'Etwas anderes',

  'causes.remedy.nothing wrong':
    'Lassen, wie es ist. Bleibt die Beschwerde, nach den Einstellungen, den Nachbarn und den Fahrzeugen sehen.',
  'causes.remedy.slip':
    'Was nicht passt, noch einmal messen, wenn möglich mit einem anderen Gerät. Zeigt es dasselbe, so stimmt etwas nicht: dann die Ursachen darunter der Reihe nach.',
  'causes.remedy.shorted turns':
    'Die Schleife muss neu geschnitten und gewickelt werden: Ein Kurzschluss in der Fuge ist nicht zu erreichen. Erst die Schleife allein am Schacht messen, um sicher zu sein, dass es nicht die Verbindung ist.',
  'causes.remedy.wrong turns':
    'Etwas Draht in den Schacht zurückziehen und zählen, oder fragen, wer sie verlegt hat. Erkennt der Kreis, was er soll, die wahre Zahl in den Plan eintragen; sonst neu wickeln.',
  'causes.remedy.wrong wire':
    'Den Durchmesser des Leiters am Schacht messen. Reicht die Güte, den wahren Draht in den Plan eintragen.',
  'causes.remedy.open':
    'Am Schacht den Widerstand jeder Schleife allein messen: Die keinen zeigt, ist unterbrochen; zeigen alle einen, ist es die Verbindung oder die Zuleitung. Die Verbindung oder die Schleife neu machen.',
  'causes.remedy.resistive splice':
    'Die Verbindung herausschneiden und neu machen: verdrillt, gelötet, dicht. Dann wieder messen; dabei die Drähte bewegen, eine schlechte Verbindung antwortet.',
  'causes.remedy.short at splice':
    'Die Verbindung öffnen, die Leiter trennen, Schleifen und Zuleitung einzeln messen und die Verbindung neu machen.',
  'causes.remedy.short in lead-in':
    'Die Zuleitung am Schacht abtrennen und von beiden Enden messen: Die beiden Entfernungen ergeben zusammen ihre Länge. Ersetzen, oder an der Stelle in einem Schacht verbinden.',
  'causes.remedy.reversed loop':
    'Die beiden Anschlussenden dieser Schleife an der Verbindung tauschen. Ist nicht bekannt, welche es ist, nach jedem Tausch die Induktivität messen.',
  'causes.remedy.missing loop': 'Den Anschlussenden am Schacht folgen und die Schleife anschließen.',
  'causes.remedy.parallel for series':
    'Die Verbindung öffnen: das Ende einer Schleife an den Anfang der nächsten, nur die beiden äußeren Enden an die Zuleitung.',
  'causes.remedy.series for parallel':
    'Die Verbindung öffnen: alle Anfänge an eine Ader der Zuleitung, alle Enden an die andere.',
  'causes.remedy.wet splice':
    'Die Verbindung öffnen, trocknen, neu machen und wasserdicht vergießen; den Schacht entwässern. Dann die Isolation wieder messen.',
  'causes.remedy.cut insulation':
    'Die Isolation jeder Schleife und der Zuleitung getrennt messen, um die Stelle zu finden. Eine Schleife mit verletzter Isolation arbeitet, bis es regnet: neu wickeln; eine Zuleitung wird ersetzt.',
  'causes.remedy.steel near':
    'Nach Stahl suchen, der nicht gezeichnet ist: Bewehrung, Deckel, Schiene. Einzeichnen und ansehen, was von der Wirkung übrig ist; mehr Windungen helfen nicht, Abstand hilft.',
  'causes.remedy.other loop':
    'Ein Stück Stahl oder ein Fahrzeug auf die Schleife bringen und sehen, welcher Kanal antwortet; dann die Drähte im Schaltschrank tauschen und beschriften.',
  'causes.remedy.longer lead-in':
    'Die wahre Länge in den Plan eintragen. Aufgerolltes Kabel im Rohr oder im Schaltschrank abschneiden.',
  'causes.remedy.wrong setting':
    'Den Kanal wie geplant einstellen, oder die wahre Einstellung in den Plan eintragen.',
  'causes.remedy.wrong meter frequency':
    'Die Messfrequenz einstellen, oder die angeben, die das Messgerät hat, und wieder messen.',
  'causes.remedy.something else':
    'Messgerät, Messleitungen und Klemmen prüfen und an einer zweiten Stelle wieder messen. Gebaut wurde vielleicht anders, als gezeichnet ist.',
  'causes.remedy.two-at-once':
    'Erst beheben, was schneller zu erreichen ist, wieder messen und sehen, ob der Rest noch für das andere spricht.',

  'causes.how.loop.resistanceDc_ohm':
    'Die Verbindung am Schacht öffnen, die beiden Enden dieser Schleife von allem trennen und mit dem Ohmmeter messen; den Widerstand der Messleitungen abziehen.',
  'causes.how.loop.inductance_H':
    'Die Verbindung am Schacht öffnen und mit dem Induktivitätsmessgerät an den beiden Enden dieser Schleife messen; die Messfrequenz notieren.',
  'causes.how.loop.q':
    'Die Verbindung am Schacht öffnen und an den beiden Enden dieser Schleife die Güte ablesen; die Messfrequenz notieren.',
  'causes.how.loop.insulation_ohm':
    'Die Verbindung am Schacht öffnen. Isolationsmessgerät zwischen ein Ende dieser Schleife und eine gute Erde, 500 V, eine Minute.',
  'causes.how.pull-box.resistanceDc_ohm':
    'Die Zuleitung am Schacht abnehmen und die verbundenen Schleifen mit dem Ohmmeter messen; den Widerstand der Messleitungen abziehen.',
  'causes.how.pull-box.inductance_H':
    'Die Zuleitung am Schacht abnehmen und die verbundenen Schleifen messen; die Messfrequenz notieren.',
  'causes.how.pull-box.q':
    'Die Zuleitung am Schacht abnehmen und die Güte der verbundenen Schleifen ablesen; die Messfrequenz notieren.',
  'causes.how.pull-box.insulation_ohm':
    'Die Zuleitung am Schacht abnehmen. Isolationsmessgerät zwischen die verbundenen Schleifen und eine gute Erde, 500 V, eine Minute.',
  'causes.how.cabinet.resistanceDc_ohm':
    'Das Gerät ausstecken und mit dem Ohmmeter an den beiden Klemmen dieses Kreises messen; den Widerstand der Messleitungen abziehen.',
  'causes.how.cabinet.inductance_H':
    'Das Gerät ausstecken und mit dem Induktivitätsmessgerät an den beiden Klemmen dieses Kreises messen; die Messfrequenz notieren.',
  'causes.how.cabinet.q':
    'Das Gerät ausstecken und an den beiden Klemmen dieses Kreises die Güte ablesen; die Messfrequenz notieren.',
  'causes.how.cabinet.insulation_ohm':
    'Das Gerät ausstecken und beide Drähte von den Klemmen nehmen, auch von einem Überspannungsableiter. Isolationsmessgerät zwischen eine Ader und Erde, 500 V, eine Minute.',
  'causes.how.cabinet.insulationBetween_ohm':
    'Die Zuleitung am Schacht von den Schleifen und im Schaltschrank von den Klemmen trennen. Isolationsmessgerät zwischen die beiden Adern.',
  'causes.how.unit.inductance_H': 'Die Induktivität ablesen, die das Gerät zeigt, ohne Fahrzeug in der Nähe.',
  'causes.how.unit.frequency_Hz':
    'Die Frequenz ablesen, die das Gerät zeigt, ohne Fahrzeug in der Nähe; die Einstellung notieren.',
  'causes.how.unit.deltaLOverL':
    'Das bekannte Fahrzeug dort halten lassen, wo es am meisten bewirkt, und die größte Änderung ablesen, die das Gerät zeigt.',

  'causes.safety.mains':
    'Netzspannung im Schaltschrank: Nur wer befähigt und befugt ist, öffnet ihn; abschalten und sichern, was sich abschalten lässt, und die örtlichen Vorschriften befolgen.',
  'causes.safety.traffic':
    'Neben oder auf der Straße: den Streifen sperren oder die Stelle nach den örtlichen Vorschriften sichern, Warnkleidung tragen und nie allein arbeiten.',
  'causes.safety.tester':
    'Die Prüfspannung zerstört Elektronik und verletzt: Nur Draht darf angeschlossen sein, niemand berührt ihn, und danach wird das Kabel entladen.',
  'causes.safety.gate':
    'Ein Tor oder eine Schranke kann sich bewegen: den Antrieb abschalten und sichern, bevor jemand im Weg steht.',

  'causes.doubt.meant': '{value} passt nicht, {other} würde passen. War das gemeint?',
  'causes.doubt.under': '{value} liegt unter der Grenze von {other}.',
  'causes.doubt.over': '{value} liegt über der Grenze von {other}.',
  'causes.doubt.far.below.resistanceDc_ohm':
    '{value} ist weniger als die Hälfte dessen, was das Kupfer dieses Kreises hat: {low} bis {high}. Messgerät mit verbundenen Spitzen auf null stellen, die Adern vom Gerät nehmen und noch einmal messen. Bleibt es dabei, nimmt der Strom einen kürzeren Weg.',
  'causes.doubt.far.above.resistanceDc_ohm':
    '{value} ist mehr als das Zehnfache dessen, was das Kupfer dieses Kreises hat: {low} bis {high}. Enden blank machen und noch einmal messen. Bleibt es dabei, ist eine Verbindung schlecht.',
  'causes.doubt.far.below.inductance_H':
    '{value} ist weniger als ein Zehntel dessen, was dieser Kreis hat: {low} bis {high}. Messbereich und Einheit prüfen und noch einmal messen. Bleibt es dabei, sind die Schleifen überbrückt.',
  'causes.doubt.far.above.inductance_H':
    '{value} ist mehr als das Zehnfache dessen, was dieser Kreis hat: {low} bis {high}. Das bewirkt kaum ein Fehler. Messbereich, Einheit und Klemmen prüfen und noch einmal messen.',
  'causes.doubt.far.above.q':
    'Güte {value} ist mehr als das Dreifache dessen, was dieser Kreis hat: {low} bis {high}. Fehler bringen nur Verluste dazu. Messfrequenz und Klemmen prüfen.',
  'causes.doubt.resistanceDc_ohm':
    '{value}: Kein Kreis aus Kupfer hat einen solchen Widerstand. Einheit und Kontakt prüfen.',
  'causes.doubt.inductance_H':
    '{value}: Keine Schleife hat eine solche Induktivität. Einheit, Vorzeichen und Messbereich prüfen.',
  'causes.doubt.q': 'Güte {value}: Das hat keine Schleife in einer Straße. Prüfen, was das Messgerät zeigt.',
  'causes.doubt.frequency_Hz': '{value}: Dort läuft kein Gerät. Die Einheit des Wertes prüfen.',
  'causes.doubt.insulation_ohm':
    '{value}: Das kann kein Messgerät unterscheiden. Als über dem Messbereich eintragen.',
  'causes.doubt.insulationBetween_ohm':
    '{value}: Das kann kein Messgerät unterscheiden. Als über dem Messbereich eintragen.',
  'causes.doubt.deltaLOverL': '{value}: So viel ändert kein Fahrzeug an einer Schleife. Prozent oder Anteil?',

  'causes.distance.resistance':
    'Aus dem Gleichstromwiderstand: höchstens {distance}; näher, wenn der Kurzschluss selbst Widerstand hat.',
  'causes.distance.inductance':
    'Aus der Induktivität: {distance}. Der Widerstand des Kurzschlusses spielt dabei kaum eine Rolle.',
  'causes.distance.agree': 'Etwa {distance}: Widerstand und Induktivität stimmen überein.',
  'causes.distance.disagree':
    'Etwa {distance} nach diesem Wert; Widerstand und Induktivität stimmen nicht überein, der Kurzschluss hat also Widerstand oder ist keiner.',

  'causes.assumed.tolerances':
    'Die Toleranzen des Plans gelten in neunzehn von zwanzig Fällen: Seiten {dimensions}, Tiefe {depth}, Zuleitung {leadIn}, Temperatur {temperature} K.',
  'causes.assumed.meters':
    'Messgeräte ohne angegebene Genauigkeit sind, wie Messgeräte gewöhnlich sind: gängige Praxis, keine veröffentlichte Quelle.',
  'causes.assumed.frequency':
    'Wo keine Messfrequenz angegeben ist, wurden Induktivität und Güte bei {frequency} gemessen.',
  'causes.assumed.temperature':
    'Wo keine Temperatur notiert ist, haben die Drähte {temperature}, bis auf die Toleranz.',
  'causes.assumed.voltage':
    'Ein Grenzwert der Isolation gilt für {voltage} V; das Prüfgerät hatte weniger, ihn einzuhalten beweist also weniger.',
  'causes.assumed.prior.commissioning':
    'Am Tag der Abnahme gelten Baufehler als wahrscheinlicher denn Schäden: Einschätzung, keine veröffentlichte Quelle.',
  'causes.assumed.prior.later':
    'Nach der Abnahme gelten Schäden als wahrscheinlicher denn Baufehler: Einschätzung, keine veröffentlichte Quelle.',
  'causes.assumed.baseline':
    'Am Tag der Abnahme war alles in Ordnung: Ihre Messwerte engen ein, was der Plan offen lässt.',
  'causes.assumed.baseline-refused':
    'Auch die Messwerte vom Tag der Abnahme passen nicht zum Plan; aus ihnen wird nichts geschlossen.',
  'causes.assumed.one':
    'Höchstens zwei Fehler zugleich, und zwei nur, wo kein einzelner die Messwerte erklärt.',
  'causes.assumed.repeats':
    'Von einem Wert, der immer wieder gemessen wurde, zählen die letzten {count} Messungen.',
  'causes.assumed.left-out': {
    one: '{count} Messwert sagt dem Modell nichts und blieb außer Betracht.',
    other: '{count} Messwerte sagen dem Modell nichts und blieben außer Betracht.'
  }
} as const satisfies Partial<Translation>;
