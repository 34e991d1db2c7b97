import type { Translation } from '../message';

/** What a figure says for a cause, and what against it. */
export const causeEvidence = {
  'causes.for.figure': '{measured} passt dazu ({predicted}); wie geplant wären es {expected}.',
  'causes.for.alone': '{measured} passt dazu ({predicted}).',
  'causes.for.over': 'Über dem Messbereich, wie es damit zu erwarten ist.',
  'causes.for.open.over': 'Das Messgerät findet keinen Weg herum: Irgendwo ist der Draht unterbrochen.',
  'causes.for.sound':
    'Die Isolation spricht mit {measured} nicht für ein Leck, wie es damit zu erwarten ist.',
  'causes.for.nothing-wrong':
    '{measured} liegt in dem, was dieser Entwurf zulässt; genau getroffen wären {expected}.',
  'causes.for.nothing-wrong.insulation': 'Die Isolation spricht mit {measured} nicht für ein Leck.',
  'causes.for.something-else': 'Keine der bekannten Ursachen ergibt {measured}.',
  'causes.for.something-else.over': 'Keine der bekannten Ursachen lässt das Messgerät hier ohne Wert.',
  'causes.for.not-told': '{measured} widerspricht dem nicht.',
  'causes.against.figure': 'Damit wären es {predicted}, gemessen wurden {measured}.',
  'causes.against.alone': 'Damit wären es {predicted}, gemessen wurden {measured}.',
  'causes.against.over': 'Über dem Messbereich, obwohl es damit noch {predicted} wären.',
  'causes.against.over.unexplained': 'Das erklärt nicht, was hier gemessen wurde.',
  'causes.against.open.finite':
    '{measured} gemessen: Es fließt Strom herum, der Draht ist also nicht unterbrochen.',
  'causes.against.should-be-over': '{measured} gemessen, obwohl das Messgerät damit nichts anzuzeigen hätte.',
  'causes.against.sound': 'Damit bliebe die Isolation in Ordnung, gemessen wurden aber {measured}.',
  'causes.against.nothing-wrong':
    'Wie geplant wären es etwa {expected}; {measured} liegt weiter weg, als Messgerät und Toleranzen zulassen.',
  'causes.against.nothing-wrong.insulation': 'Die Isolation ist mit {measured} nicht in Ordnung.',
  'causes.against.nothing-wrong.over':
    'Über dem Messbereich, obwohl ein gesunder Schleifenkreis einen Wert ergibt.',
  'causes.against.something-else': '{measured} wird von einer der bekannten Ursachen besser erklärt.',
  'causes.against.something-else.over':
    'Ein Messgerät ohne Wert wird von einer bekannten Ursache besser erklärt.',
  'causes.evidence.which-one': 'Welche es ist, sagen diese Messwerte nicht: {names}.',
  'causes.evidence.which-one-or-lead-in':
    'Welche es ist, sagen diese Messwerte nicht: {names}, oder die Zuleitung.',
  'causes.evidence.in-lead-in':
    'Der Fehler liegt in der Zuleitung oder an ihrer Verbindung mit den Schleifen.',
  'causes.evidence.splice-or-end':
    'Ein Kurzschluss an der Verbindung und einer auf den letzten Metern der Zuleitung messen sich gleich: beides ansehen.',
  'causes.evidence.splice-or-cable':
    'Vom Schaltschrank aus messen sich eine Ableitung zur Erde in einer Verbindung und eine im Kabel gleich: am Schacht trennen und beide prüfen.',
  'causes.evidence.two-at-once':
    'Keine einzelne Ursache erklärt alle Messwerte; diese beiden zusammen tun es.',
  'causes.evidence.prior':
    'Die Messwerte sprechen kaum dafür oder dagegen; gezeigt wird, wie häufig es nach Erfahrung ist.',

  'causes.for.shorted turns.inductance_H':
    'Die Induktivität ist {measured} statt {expected}: Kurzgeschlossene Windungen fallen aus und wirken auf die übrigen zurück.',
  'causes.for.shorted turns.q':
    'Die Güte ist von {expected} auf {measured} gesunken: Kurzgeschlossene Windungen sind ein geschlossener Ring, der Energie kostet.',
  'causes.for.shorted turns.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Ein Teil des Drahtes ist überbrückt.',
  'causes.against.shorted turns.inductance_H':
    'Die Induktivität ist {measured}; mit kurzgeschlossenen Windungen wäre sie {predicted}.',
  'causes.against.shorted turns.q':
    'Eine Güte von {measured} passt nicht zu einem geschlossenen Ring aus kurzgeschlossenen Windungen, der {predicted} ergäbe.',
  'causes.against.shorted turns.resistanceDc_ohm':
    'Der Widerstand ist {measured}; mit einem überbrückten Teil des Drahtes wäre er {predicted}.',
  'causes.for.wrong turns.inductance_H':
    'Die Induktivität geht fast mit dem Quadrat der Windungen: {measured} gehört zu einer anderen Zahl als der gezeichneten, die {expected} ergibt.',
  'causes.for.wrong turns.resistanceDc_ohm':
    'Der Widerstand geht mit der Drahtlänge: {measured} gehört zu einer anderen Windungszahl als der gezeichneten, die {expected} ergibt.',
  'causes.against.wrong turns.inductance_H':
    'Die Induktivität ist {measured}; eine andere Windungszahl ergäbe {predicted}.',
  'causes.against.wrong turns.resistanceDc_ohm':
    'Der Widerstand ist {measured}; der Draht einer anderen Windungszahl hätte {predicted}.',
  'causes.for.wrong wire.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Das ist Kupfer von anderem Querschnitt.',
  'causes.against.wrong wire.resistanceDc_ohm':
    'Der Widerstand ist {measured}; Kupfer von diesem Querschnitt hätte {predicted}.',
  'causes.against.wrong wire.inductance_H':
    'Ein anderer Draht ändert die Induktivität kaum: {predicted}, gemessen wurden aber {measured}.',
  'causes.for.resistive splice.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Eine Verbindung im Weg hat Widerstand.',
  'causes.for.resistive splice.q':
    'Die Güte ist von {expected} auf {measured} gesunken: Zur Wicklung ist Widerstand hinzugekommen.',
  'causes.against.resistive splice.resistanceDc_ohm':
    'Der Widerstand ist {measured}; mit einer schlechten Verbindung wäre er {predicted}.',
  'causes.against.resistive splice.inductance_H':
    'Eine schlechte Verbindung lässt die Induktivität bei {predicted}, gemessen wurden aber {measured}.',
  'causes.against.resistive splice.q':
    'Eine Güte von {measured} passt nicht zu einer schlechten Verbindung: {predicted}.',
  'causes.for.short at splice.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Der Strom kehrt vor den Schleifen um.',
  'causes.for.short at splice.inductance_H':
    'Von {expected} sind nur {measured} übrig, etwa was die Zuleitung allein hat.',
  'causes.against.short at splice.resistanceDc_ohm':
    'Der Widerstand ist {measured}; ein Kurzschluss vor den Schleifen ließe {predicted} übrig.',
  'causes.against.short at splice.inductance_H':
    'Die Induktivität ist {measured}, die Schleifen sind also dabei; ein Kurzschluss davor ließe {predicted} übrig.',
  'causes.for.short in lead-in.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Der Strom nimmt einen kurzen Weg zurück.',
  'causes.for.short in lead-in.inductance_H':
    'Von {expected} sind nur {measured} übrig, wie sie ein Stück Zuleitung hat.',
  'causes.against.short in lead-in.resistanceDc_ohm':
    'Der Widerstand ist {measured}; ein Kurzschluss in der Zuleitung ließe {predicted} übrig.',
  'causes.against.short in lead-in.inductance_H':
    'Die Induktivität ist {measured}, die Schleifen sind also dabei; ein Kurzschluss in der Zuleitung ließe {predicted} übrig.',
  'causes.for.reversed loop.inductance_H':
    'Die Induktivität ist {measured} statt {expected}: Die Schleifen koppeln mit umgekehrtem Vorzeichen.',
  'causes.against.reversed loop.inductance_H':
    'Die Induktivität ist {measured}; mit einer verpolten Schleife wäre sie {predicted}.',
  'causes.against.reversed loop.resistanceDc_ohm':
    'Eine verpolte Schleife lässt den Widerstand bei {predicted}, gemessen wurden aber {measured}.',
  'causes.for.missing loop.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Eine Schleife ist nicht im Schleifenkreis.',
  'causes.for.missing loop.inductance_H':
    'Die Induktivität ist {measured} statt {expected}: Eine Schleife ist nicht im Schleifenkreis.',
  'causes.against.missing loop.resistanceDc_ohm':
    'Der Widerstand ist {measured}; ohne eine der Schleifen wäre er {predicted}.',
  'causes.against.missing loop.inductance_H':
    'Die Induktivität ist {measured}; ohne eine der Schleifen wäre sie {predicted}.',
  'causes.for.parallel for series.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}, wie ihn Schleifen nebeneinander haben.',
  'causes.for.parallel for series.inductance_H':
    'Die Induktivität ist {measured} statt {expected}, wie sie Schleifen nebeneinander haben.',
  'causes.against.parallel for series.resistanceDc_ohm':
    'Der Widerstand ist {measured}; parallele Schleifen hätten {predicted}.',
  'causes.against.parallel for series.inductance_H':
    'Die Induktivität ist {measured}; parallele Schleifen hätten {predicted}.',
  'causes.for.series for parallel.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}, wie ihn Schleifen hintereinander haben.',
  'causes.for.series for parallel.inductance_H':
    'Die Induktivität ist {measured} statt {expected}, wie sie Schleifen hintereinander haben.',
  'causes.against.series for parallel.resistanceDc_ohm':
    'Der Widerstand ist {measured}; Schleifen in Reihe hätten {predicted}.',
  'causes.against.series for parallel.inductance_H':
    'Die Induktivität ist {measured}; Schleifen in Reihe hätten {predicted}.',
  'causes.for.wet splice.insulation_ohm':
    'Die Isolation gegen Erde ist auf {measured} gesunken: Wasser hat einen Weg zum Leiter gefunden.',
  'causes.for.wet splice.insulationBetween_ohm':
    'Nur {measured} zwischen den Leitern: Wasser in einer Verbindung überbrückt sie.',
  'causes.for.wet splice.q':
    'Die Güte ist von {expected} auf {measured} gesunken: Wasser zwischen den Leitern kostet Energie.',
  'causes.against.wet splice.insulation_ohm':
    'Die Isolation gegen Erde ist {measured}; mit Wasser in einer Verbindung wäre sie {predicted}.',
  'causes.against.wet splice.insulationBetween_ohm':
    '{measured} zwischen den Leitern; Wasser in einer Verbindung ließe {predicted} übrig.',
  'causes.for.cut insulation.insulation_ohm':
    'Die Isolation gegen Erde ist auf {measured} gesunken: Der Leiter berührt Feuchtes.',
  'causes.against.cut insulation.insulation_ohm':
    'Die Isolation gegen Erde ist {measured}; mit verletzter Isolation wäre sie {predicted}.',
  'causes.against.cut insulation.inductance_H':
    'Eine verletzte Isolation lässt die Induktivität bei {predicted}, gemessen wurden aber {measured}.',
  'causes.for.steel near.inductance_H':
    'Die Induktivität ist {measured} statt {expected}: Stahl nahe den Drähten drängt ihr Feld zurück.',
  'causes.for.steel near.q':
    'Die Güte ist {measured} statt {expected}: Stahl nahe den Drähten kostet Energie.',
  'causes.against.steel near.resistanceDc_ohm':
    'Stahl lässt den Gleichstromwiderstand bei {predicted}, gemessen wurden aber {measured}.',
  'causes.against.steel near.inductance_H':
    'Die Induktivität ist {measured}; mit Stahl in der Nähe wäre sie {predicted}.',
  'causes.against.steel near.q': 'Die Güte ist {measured}; mit Stahl in der Nähe wäre sie {predicted}.',
  'causes.for.other loop.resistanceDc_ohm':
    'Der Widerstand ist {measured}, wie ihn die Schleifen eines anderen Schleifenkreises hier hätten; die eigenen haben {expected}.',
  'causes.for.other loop.inductance_H':
    'Die Induktivität ist {measured}, wie sie die Schleifen eines anderen Schleifenkreises hier hätten; die eigenen haben {expected}.',
  'causes.against.other loop.resistanceDc_ohm':
    'Der Widerstand ist {measured}; die Schleifen des anderen Schleifenkreises ergäben {predicted}.',
  'causes.against.other loop.inductance_H':
    'Die Induktivität ist {measured}; die Schleifen des anderen Schleifenkreises ergäben {predicted}.',
  'causes.for.longer lead-in.resistanceDc_ohm':
    'Der Widerstand ist {measured} statt {expected}: Es liegt mehr Kabel, als gezeichnet ist.',
  'causes.for.longer lead-in.inductance_H':
    'Die Induktivität ist {measured} statt {expected}: Mehr Kabel bringt etwas dazu.',
  'causes.against.longer lead-in.resistanceDc_ohm':
    'Der Widerstand ist {measured}; mit mehr Kabel wäre er {predicted}.',
  'causes.for.wrong setting.frequency_Hz':
    '{measured} ergibt eine andere Einstellung; die gemeinte ergibt {expected}.',
  'causes.against.wrong setting.frequency_Hz':
    'Die Frequenz ist {measured}; eine andere Einstellung ergäbe {predicted}.',
  'causes.against.wrong setting.inductance_H':
    'Eine Einstellung ändert nichts an der Induktivität: {predicted}, gemessen wurden aber {measured}.',
  'causes.for.wrong meter frequency.q':
    'Eine Güte von {measured} hat der Schleifenkreis bei einer anderen Messfrequenz; bei der angegebenen hat er {expected}.',
  'causes.for.wrong meter frequency.inductance_H':
    '{measured} hat der Schleifenkreis bei einer anderen Messfrequenz; bei der angegebenen hat er {expected}.',
  'causes.against.wrong meter frequency.resistanceDc_ohm':
    'Eine Messfrequenz ändert nichts am Gleichstromwiderstand: {predicted}, gemessen wurden aber {measured}.',
  'causes.against.wrong meter frequency.q':
    'Die Güte ist {measured}; bei einer anderen Messfrequenz wäre sie {predicted}.'
} as const satisfies Partial<Translation>;
