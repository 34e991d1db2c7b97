import type { Translation } from '../message';

/** Figures and findings. */
export const readout = {
  'quantity.inductance': 'Induktivität',
  'quantity.terminalInductance': 'Scheinbare Induktivität an den Klemmen',
  'quantity.apparent': 'Scheinbare Induktivität, mit der Kapazität',
  'quantity.apparentShort': 'L schein.',
  'quantity.magnetic': 'Magnetische Induktivität, ohne jede Kapazität',
  'quantity.magneticShort': 'L magn.',
  'quantity.dc': 'Gleichstromwiderstand',
  'quantity.dcShort': 'R GS',
  'quantity.resistance': 'Widerstand bei der Betriebsfrequenz',
  'quantity.q': 'Güte',
  'quantity.frequency': 'Betriebsfrequenz',
  'quantity.selfResonance': 'Eigenresonanz der Schleife allein',
  'quantity.selfResonanceShort': 'Resonanz',
  'quantity.wire': 'Draht in der Fuge',
  'quantity.wireShort': 'Draht',
  'quantity.sawCut': 'Länge des Fugenschnitts',
  'quantity.sawCutShort': 'Schnitt',
  'quantity.cover': 'Überdeckung des obersten Drahts',
  'quantity.coverShort': 'Überdeck.',

  'readout.title': 'Werte',
  'readout.loopAlone': 'Schleife allein',
  'readout.atTerminals': 'Schleifenkreis {name}, an den Klemmen des Geräts',
  'readout.noCircuit': 'In keinem Schleifenkreis: Werte bei 50 kHz.',

  'readout.following': 'von eben …',

  'losses.title': 'Verluste',
  'losses.ofLoop': 'Verluste der Schleife allein nach Ursache, in Reihe',
  'losses.ofCircuit': 'Verluste von Schleifenkreis {name} nach Ursache, als Widerstand an den Klemmen',
  'losses.cause': 'Ursache',
  'losses.resistance': 'Widerstand',
  'losses.share': 'Anteil',
  'losses.copper': 'Kupfer der Schleife, Gleichstrom',
  'losses.skin': 'Skineffekt',
  'losses.proximity': 'Nähe der Windungen',
  'losses.tail': 'Anschlussende',
  'losses.lead-in': 'Zuleitung',
  'losses.pavement': 'Belag',
  'losses.steel': 'Stahl',
  'losses.added': 'Von Ihnen angegeben',

  'capacitance.title': 'Kapazität',
  'capacitance.caption':
    'Kapazität der Schleife und was sie bewirkt, jetzt und von trockenem bis nassem Belag',
  'capacitance.now': 'Wie angegeben',
  'capacitance.dryWet': 'Trocken – nass',
  'capacitance.whole': 'Kapazität',
  'capacitance.turns': 'Zwischen Windungen',
  'capacitance.ground': 'Zum Boden',
  'capacitance.hint':
    'Von der trockensten bis zur nassesten Permittivität, die das Material des Belags haben kann.',

  'capacitance.conducts':
    'Dieser Belag leitet: Bei diesen Frequenzen zählt seine Permittivität dann kaum, und trocken und nass kommen gleich heraus.',

  'ranges.title': 'Plausible Spannen',
  'ranges.caption': 'Wo jeder Wert in neunzehn von zwanzig Fällen liegt und was ihn am meisten verschiebt',
  'ranges.lies': 'Liegt zwischen',
  'ranges.most': 'Am meisten durch',
  'ranges.movedMost': 'L am meisten verschoben durch: {input}.',
  'ranges.coming': 'Die plausiblen Spannen folgen …',
  'ranges.exact': 'Keine Toleranz angegeben: Die Werte stehen für sich.',
  'ranges.old': 'Spannen der Zeichnung von eben …',
  'ranges.hint': 'In neunzehn von zwanzig Fällen, wenn die Toleranzen der Anlage gelten.',
  'ranges.input.dimensions': 'Abmessungen',
  'ranges.input.depth': 'Fugentiefe',
  'ranges.input.wirePitch': 'Drahtabstand',
  'ranges.input.leadInLength': 'Länge der Zuleitung',
  'ranges.input.temperature': 'Temperatur',
  'ranges.input.permittivity': 'Permittivität',
  'ranges.input.vehicleHeight': 'Höhe des Fahrzeugs',

  'conditions.title': 'Temperatur und Feuchte',
  'conditions.caption':
    'Die Werte an den Klemmen am kältesten und am heißesten Tag und mit trockenem und nassem Belag',
  'conditions.cold': 'Kalt, {temperature}',
  'conditions.hot': 'Heiß, {temperature}',
  'conditions.dry': 'Trocken',
  'conditions.wet': 'Nass',
  'conditions.hint': 'Trocken und nass: die Enden dessen, was die Permittivität des Belags offen lässt.',

  'classes.title': 'Genormte Prüfplatten',
  'classes.caption': 'Prüfplatten der Fahrzeugklassen: an der Normschleife und hier',
  'classes.plate': 'Prüfplatte',
  'classes.standard': 'Normschleife',
  'classes.here': 'Hier, mindestens',
  'classes.margin': 'Zur Schwelle',
  'classes.hint':
    'Die Höhe jeder Platte ist so eingestellt, dass sie an der Normschleife den Wert der Klasse ergibt; hier wird sie den Fahrstreifen entlanggefahren. Eine ebene Platte spürt eine Fuge genau unter ihrer Mitte kaum: Was ihr dort entgeht, entgeht einem echten Fahrzeug vielleicht nicht.',

  'steelCost.title': 'Stahl',
  'steelCost.caption': 'Was der Stahl im Belag diesen Schleifenkreis kostet',
  'steelCost.without': 'Ohne',
  'steelCost.with': 'Mit',
  'steelCost.lost': 'Verloren',
  'steelCost.clear': 'Tiefer als {depth} würde er das erste verlangte Fahrzeug weniger als {share} kosten.',
  'steelCost.nowhere': 'Keine Tiefe bis 2 m bringt die Kosten unter {share}.',

  'frequency.given': 'Frequenz wie vorgegeben.',
  'frequency.setting': 'Frequenz aus der Stufe des Geräts.',
  'frequency.assumed': 'Kein Kanal: 50 kHz angenommen.',

  'probe.title': 'Was es dort ändert, wo es steht',

  'response.title': 'Verstimmung je Fahrzeug, zur Schwelle',
  'response.paths':
    'Zweiräder auf ihrer schlechtesten Fahrlinie, andere in der Mitte des Fahrstreifens. Alle Fahrlinien: „Überfahrt“, „Quer“.',
  'response.following': 'Verstimmung, der Zeichnung von eben …',
  'response.caption':
    'Den Fahrstreifen entlanggefahrene Fahrzeuge: die kleinste Verstimmung aller Fahrlinien',
  'response.vehicle': 'Fahrzeug',
  'response.worst': 'Verstimmung',
  'response.margin': 'Vielfaches der Schwelle',
  'response.verdict': 'Urteil',
  'response.askedFor': 'muss erkannt werden',
  'response.bestTitle':
    'In der Mitte des Fahrstreifens; bei einem Zweirad auf seiner schlechtesten Fahrlinie',
  'response.detected': 'erkannt',
  'response.someTimes': 'teilweise',
  'response.missed': 'verpasst',
  'response.noThreshold': 'kein Kanal',

  'finding.title': 'Befunde',
  'finding.whatClears': 'Was würde ihn beseitigen?',
  'finding.none': 'Nichts zu berichtigen.',
  'finding.problem': 'Mangel',
  'finding.caution': 'Warnung',
  'finding.note': 'Hinweis',
  'finding.count.problem': { one: '{count} Mangel', other: '{count} Mängel' },
  'finding.count.caution': { one: '{count} Warnung', other: '{count} Warnungen' },
  'finding.count.note': { one: '{count} Hinweis', other: '{count} Hinweise' }
} as const satisfies Partial<Translation>;
