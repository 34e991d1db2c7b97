import type { Translation } from '../message';

/** How it was computed: what every explanation shares, and the figures of a loop and of what is cut and bought. */
export const explain = {
  'explain.values': 'Mit den jetzigen Werten',
  'explain.what': 'Was',
  'explain.symbol': 'Zeichen',
  'explain.value': 'Wert',
  'explain.source': 'Quelle',
  'explain.range': 'Gilt für',
  'explain.omits': 'Nicht enthalten',
  'explain.circuit': 'Schleifenkreis {name}',

  'explain.in.turns': 'Windungen',
  'explain.in.conductor': 'Durchmesser des Leiters',
  'explain.in.insulated': 'Durchmesser mit Isolierung',
  'explain.in.perimeter': 'Länge des Umrisses',
  'explain.in.slotDepth': 'Fugentiefe',
  'explain.in.slotWidth': 'Fugenbreite',
  'explain.in.frequency': 'Betriebsfrequenz',
  'explain.in.temperature': 'Drahttemperatur',
  'explain.in.wireLength': 'Draht in der Fuge',
  'explain.in.magnetic': 'Magnetische Induktivität',
  'explain.in.steelInductance': 'Vom Stahl genommen, schon eingerechnet',
  'explain.in.capacitance': 'Kapazität',
  'explain.in.insulation': 'Relative Permittivität der Isolierung',
  'explain.in.fill': 'Relative Permittivität des Vergusses',
  'explain.in.pavement': 'Relative Permittivität des Belags',
  'explain.in.conductivity': 'Leitfähigkeit des Belags, mS/m',
  'explain.in.loopInductance': 'Magnetische Induktivität einer Schleife',
  'explain.in.leadIn': 'Länge der Zuleitung',
  'explain.in.cable': 'Länge eines Kabels',
  'explain.in.setting': 'Kapazität der Frequenzstufe',
  'explain.in.coldResistance': 'Widerstand am kältesten Tag',
  'explain.in.hotResistance': 'Widerstand am heißesten Tag',
  'explain.in.dryInductance': 'Scheinbare Induktivität, trocken',
  'explain.in.wetInductance': 'Scheinbare Induktivität, nass',
  'explain.in.threshold': 'Ansprechschwelle',
  'explain.in.height': 'Wirksame Höhe der größten Platte',
  'explain.in.response': 'Änderung der Induktivität, Abnahme negativ',
  'explain.in.deltaL': 'Änderung der Induktivität',
  'explain.in.margin': 'Vielfaches der Schwelle',
  'explain.in.low': 'Unteres Ende',
  'explain.in.high': 'Oberes Ende',
  'explain.in.classFigure': 'Wert der Klasse an der Normschleife',
  'explain.in.withoutSteel': 'Scheinbare Induktivität ohne Stahl',
  'explain.in.qLost': 'Verlorener Anteil der Güte',
  'explain.in.inductanceLost': 'Verlorener Anteil der Induktivität',
  'explain.in.loopsMutual': 'Von den Schleifen',
  'explain.in.steelMutual': 'Was Stahl beiträgt',
  'explain.in.conduitMutual': 'Von gemeinsamen Leerrohren',
  'explain.in.locking': 'Näher als das können beide einrasten',
  'explain.in.rest': 'Frequenz in Ruhe',
  'explain.in.coldFrequency': 'Frequenz am kältesten Tag',
  'explain.in.hotFrequency': 'Frequenz am heißesten Tag',
  'explain.in.deepest': 'Stärkste Änderung durch ein Fahrzeug',
  'explain.in.lowest': 'Niedrigste Frequenz',
  'explain.in.highest': 'Höchste Frequenz',
  'explain.in.lowest2': 'Niedrigste Frequenz des anderen',
  'explain.in.highest2': 'Höchste Frequenz des anderen',
  'explain.in.coupling': 'Kopplung',
  'explain.in.separation': 'Kleinster Abstand der beiden Frequenzen',
  'explain.in.measuringTime': 'Messzeit des Geräts',
  'explain.in.ripple': 'Scheinbare Änderung der Induktivität',

  'explain.loop-inductance.title': 'Magnetische Induktivität der Schleife allein',
  'explain.loop-inductance.words':
    'Jedes gerade Stück jeder Windung wird mit jedem anderen und mit sich selbst gepaart; die Gegeninduktivitäten aller Paare werden addiert. Dazu kommt das Feld im Kupfer, das mit steigender Frequenz abnimmt.',
  'explain.loop-inductance.source':
    'Selbstinduktivität eines geraden Drahts: Rosa 1908. Zwei gerade Leiterfäden beliebig im Raum: Campbell; Grover 1946, Kapitel 6 und 7. Zwei Kreise auf einer Achse: Maxwell, mit vollständigen elliptischen Integralen. Feld im Kupfer: Bessel-Lösung des runden Drahts, tabelliert in NBS Circular 74.',
  'explain.loop-inductance.range':
    'Schleifen jeder Form und Größe, geschnitten oder gezeichnet; auf 0,2 % genau gegen geschlossene Formeln und konvergierte numerische Integration.',
  'explain.loop-inductance.omits':
    'Drähte, die in der Fuge nicht in einer Säule liegen; Biegungen des Drahts an den Ecken; Eisen in der Nähe, das nicht als Stahl gezeichnet ist.',

  'explain.loop-apparent.title': 'Scheinbare Induktivität der Schleife',
  'explain.loop-apparent.words':
    'Die eigene Kapazität der Schleife liegt parallel zu ihrer Induktivität. Unterhalb der Resonanz wirken beide zusammen wie eine größere Induktivität: Das zeigt eine Messbrücke an den Enden der Schleife.',
  'explain.loop-apparent.source':
    'Parallelschaltung einer Induktivität und einer Kapazität, jedes Lehrbuch der Netzwerke.',
  'explain.loop-apparent.range':
    'Deutlich unterhalb der Eigenresonanz; die Kapazität selbst ist eine Schätzung.',
  'explain.loop-apparent.omits': 'Verluste; sie ändern die scheinbare Induktivität um etwa 1/Q².',

  'explain.loop-dc.title': 'Gleichstromwiderstand der Schleife',
  'explain.loop-dc.words':
    'Länge des Drahts durch seinen Querschnitt, mal dem spezifischen Widerstand von Kupfer bei der Drahttemperatur. Das zeigt ein Ohmmeter an den Enden der Schleife.',
  'explain.loop-dc.source':
    'Weichgeglühtes Kupfer, IEC 60028: 1,7241·10⁻⁸ Ω·m und 0,00393 je Kelvin bei 20 °C. Amerikanische Drahtmaße: ASTM B258.',
  'explain.loop-dc.range': 'Massives Kupfer von etwa −60 bis 90 °C.',
  'explain.loop-dc.omits':
    'Anschlussende, Zuleitung, Verbindungsstellen und Ihr eigener Zusatzwiderstand, der für sich steht; der Drall von Litze, der ein bis zwei Prozent ausmacht.',

  'explain.loop-ac.title': 'Widerstand der Schleife bei der Betriebsfrequenz',
  'explain.loop-ac.words':
    'Der Gleichstromwiderstand, dazu was den Strom an den Rand des Drahts drängt (Skineffekt), was das Feld der Nachbarwindungen in ihm treibt (Näheeffekt) und was in leitendem Belag und in Stahl verloren geht; Ihr eigener Wert kommt noch dazu.',
  'explain.loop-ac.source':
    'Skin- und Näheeffekt: exakte Bessel-Lösungen des runden Drahts (Ramo, Whinnery & Van Duzer; Skineffekt tabelliert in NBS Circular 74). Belag: Ströme, die das elektrische Feld der Schleife induziert, in erster Ordnung der Leitfähigkeit. Stahl: siehe was Stahl kostet.',
  'explain.loop-ac.range':
    'Frequenzen von 1 kHz bis 1 MHz; der Anteil des Belags, solange die Schleife klein gegen die Eindringtiefe im Boden ist.',
  'explain.loop-ac.omits':
    'Schlechte Verbindungen, wenn Sie sie nicht als Widerstand angeben; Verluste in Metall, das nicht gezeichnet ist.',

  'explain.loop-q.title': 'Güte der Schleife allein',
  'explain.loop-q.words':
    'Wievielmal größer der induktive Blindwiderstand ist als der Wirkwiderstand. Eine niedrige Güte heißt, dass Verluste das Signal eines Fahrzeugs aufzehren.',
  'explain.loop-q.source': 'Definition der Güte.',
  'explain.loop-q.range': 'Die angezeigte Frequenz.',
  'explain.loop-q.omits': 'Anschlussende und Zuleitung; sie stecken in der Güte des Schleifenkreises.',

  'explain.capacitance.title': 'Kapazität der Schleife',
  'explain.capacitance.words':
    'Zwischen benachbarten Windungen und von der Wicklung zum Boden um die Fuge: beides so, wie es an den beiden Enden der Schleife zählt.',
  'explain.capacitance.source': 'Summe der beiden Teile; jeder hat seine eigene Erklärung.',
  'explain.capacitance.range':
    'Eine technische Schätzung: auf einige zehn Prozent, ungenauer bei unbekannter Permittivität des Belags.',
  'explain.capacitance.omits':
    'Die gegenseitige Abschirmung der Drähte einer Säule; Anschlussende und Zuleitung, die eigene Leitungen sind.',

  'explain.turn-capacitance.title': 'Kapazität zwischen den Windungen',
  'explain.turn-capacitance.words':
    'Zwei runde Drähte nebeneinander in ihrer Isolierung. An jedem Zwischenraum benachbarter Windungen liegt nur ein N-tel der Spannung, sodass das Ganze wenig zählt.',
  'explain.turn-capacitance.source':
    'Kapazität zweier paralleler runder Drähte, jedes Lehrbuch der Elektrostatik.',
  'explain.turn-capacitance.range': 'Windungen, die sich berühren und in einer Säule liegen.',
  'explain.turn-capacitance.omits': 'Luft oder Verguss zwischen den runden Isolierungen.',

  'explain.ground-capacitance.title': 'Kapazität zum Boden',
  'explain.ground-capacitance.words':
    'Der Draht in koaxialen Schichten: seine Isolierung, der Verguss bis zur Fugenwand und der Belag bis zur Fugentiefe. Die Spannung fällt gleichmäßig entlang der Wicklung ab, sodass ein Drittel des Ganzen zählt. Wo die Leitfähigkeit des Belags angegeben ist, ist seine Permittivität komplex: Er ist dann fast ein Leiter, und übrig bleibt die Kapazität von Isolierung und Verguss.',
  'explain.ground-capacitance.source': 'Koaxiale Schichten in Reihe, jedes Lehrbuch der Elektrostatik.',
  'explain.ground-capacitance.range':
    'Eine Schätzung. Die Permittivität des Belags ist schlecht bekannt: etwa 2 bis 4 für trockenen Asphalt, 20 und mehr für nassen Beton.',
  'explain.ground-capacitance.omits':
    'Dass die Schichten nicht rund sind und dass die Drähte einer Säule einander abschirmen.',

  'explain.self-resonance.title': 'Eigenresonanz der Schleife',
  'explain.self-resonance.words':
    'Die Frequenz, bei der Induktivität und eigene Kapazität der Schleife von selbst schwingen. Die Betriebsfrequenz soll deutlich darunter liegen.',
  'explain.self-resonance.source': 'Thomsonsche Schwingungsformel.',
  'explain.self-resonance.range':
    'So gut wie die Kapazität: eine Schätzung mit großer Spanne zwischen trocken und nass.',
  'explain.self-resonance.omits': 'Anschlussende und Zuleitung, die sie weiter senken.',

  'explain.cover.title': 'Überdeckung des obersten Drahts',
  'explain.cover.words':
    'Fugentiefe abzüglich der Höhe der Drahtsäule. In einer Fuge, die sich zwei Hälften einer Schleife teilen, enthält die Säule die Drähte beider.',
  'explain.cover.source': 'Geometrie der Fuge.',
  'explain.cover.range': 'Drähte, die auf den Grund gedrückt sind, einer über dem anderen.',
  'explain.cover.omits': 'Füllschnur und alles andere unter oder zwischen den Drähten.',

  'explain.wire.title': 'Draht',
  'explain.wire.words':
    'Alle Windungen entlang des Fugenschnitts und beide Drähte der Anschlussenden mit ihrer Zugabe.',
  'explain.wire.source': 'In der Zeichnung gemessen.',
  'explain.wire.range': 'Die Zeichnung, wie sie ist.',
  'explain.wire.omits':
    'Verschnitt und Mehrlänge durch Verdrillen, die die Mengenermittlung für sich aufführt, und was an der Verbindungsstelle übersteht, wenn es nicht in der Länge des Anschlussendes steckt.',

  'explain.saw-cut.title': 'Fugenschnitt',
  'explain.saw-cut.words':
    'Die Fuge der Schleife und der Schnitt zum Schacht: so lang wie das Anschlussende, bei einem gezeichneten ohne Zugabe und Tiefe. Eine Fuge, in der mehrere Schleifen oder Anschlussenden liegen, zählt einmal, bei einer von ihnen.',
  'explain.saw-cut.source': 'In der Zeichnung gemessen.',
  'explain.saw-cut.range': 'Die Zeichnung, wie sie ist.',
  'explain.saw-cut.omits': 'Überschnitte an den Ecken: Die Mengenermittlung führt sie für sich auf.'
} as const satisfies Partial<Translation>;
