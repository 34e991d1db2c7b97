import type { Translation } from '../message';

/** How it was computed: circuits, vehicles, neighbours. */
export const explainCircuit = {
  'explain.terminal-inductance.title': 'Scheinbare Induktivität an den Klemmen',
  'explain.terminal-inductance.words':
    'Die volle Impedanzmatrix der Schleifen des Kreises, mit der Gegeninduktivität zwischen je zweien, wird in Reihe und parallel verbunden, wie sie verdrahtet sind; Anschlussende und Zuleitung folgen als Leitungen. Die Induktivität ist der Blindwiderstand an den Klemmen durch 2πf.',
  'explain.terminal-inductance.source':
    'Netzwerk- und Leitungsgleichungen, jedes Lehrbuch der Netzwerke; Gegeninduktivitäten wie bei einer Schleife (Rosa 1908; Grover 1946; Maxwell). Induktivität eines verdrillten Paars: Doppelleitung.',
  'explain.terminal-inductance.range': 'Jede Reihen- und Parallelschaltung; exakt für ein lineares Netzwerk.',
  'explain.terminal-inductance.omits': 'Ströme, die zwischen Schleifenkreisen verschiedener Kanäle fließen.',

  'explain.terminal-magnetic.title': 'Magnetische Induktivität an den Klemmen',
  'explain.terminal-magnetic.words':
    'Dasselbe Netzwerk ohne jede Kapazität: was Schleifen und Kabel allein durch ihr Magnetfeld haben.',
  'explain.terminal-magnetic.source': 'Wie die scheinbare Induktivität, mit C = 0.',
  'explain.terminal-magnetic.range': 'Zum Vergleich mit Handrechnungen, die keine Kapazität kennen.',
  'explain.terminal-magnetic.omits': 'Alle Kapazitäten; kein Messgerät zeigt diesen Wert.',

  'explain.terminal-resistance.title': 'Widerstand an den Klemmen',
  'explain.terminal-resistance.words':
    'Der Realteil der Impedanz. Er ist die Summe aller Verluste: Jeder Widerstand zählt mit dem Quadrat seines Anteils am Klemmenstrom.',
  'explain.terminal-resistance.source':
    'Netzwerkgleichungen; die Widerstände der Schleifen wie dort erklärt.',
  'explain.terminal-resistance.range': 'Die angezeigte Frequenz und Temperatur.',
  'explain.terminal-resistance.omits': 'Verbindungsstellen, wenn Sie sie nicht bei einer Schleife angeben.',

  'explain.terminal-dc.title': 'Gleichstromwiderstand an den Klemmen',
  'explain.terminal-dc.words':
    'Kupfer der Schleifen, Anschlussenden und Zuleitung, in Reihe und parallel, wie sie verdrahtet sind, mit Ihren Zusätzen. Das zeigt ein Ohmmeter am Schaltschrank.',
  'explain.terminal-dc.source': 'Weichgeglühtes Kupfer, IEC 60028; Ohmsches Gesetz.',
  'explain.terminal-dc.range': 'Die angezeigte Drahttemperatur für den ganzen Schleifenkreis.',
  'explain.terminal-dc.omits':
    'Ein Kabel, das durch seine Kennwerte angegeben ist, zählt bei jeder Temperatur mit dem angegebenen Widerstand.',

  'explain.terminal-q.title': 'Güte an den Klemmen',
  'explain.terminal-q.words':
    'Blindwiderstand durch Wirkwiderstand des ganzen Kreises, wie das Gerät ihn sieht. Unter 5 läuft ein Gerät womöglich nicht.',
  'explain.terminal-q.source':
    'Definition. Die Grenze von 5: NEMA TS 1 und TS 2, aus der Erinnerung an die Norm.',
  'explain.terminal-q.range': 'Die angezeigte Frequenz und Temperatur.',
  'explain.terminal-q.omits': 'Verluste im Gerät.',

  'explain.frequency.title': 'Betriebsfrequenz',
  'explain.frequency.words':
    'Der Oszillator des Geräts schwingt mit der Induktivität des Schleifenkreises und der Kapazität seiner Frequenzstufe; Verluste ziehen ihn etwas herunter. Eine Frequenz, die Sie vorgeben, geht vor; ohne Kanal werden 50 kHz angenommen.',
  'explain.frequency.source':
    'Thomsonsche Schwingungsformel; die Verschiebung durch Verluste ist das Glied zweiter Ordnung eines gedämpften Schwingkreises.',
  'explain.frequency.range':
    'Güte über etwa 2. Die Kapazität der Stufe gehört zum Gerät: Eine gemessene Frequenz an einer bekannten Schleife liefert sie.',
  'explain.frequency.omits': 'Streukapazität am Eingang des Geräts.',

  'explain.losses.title': 'Woher der Widerstand kommt',
  'explain.losses.words':
    'Jede Ursache ist das, was sie je Ampere zum Quadrat an den Enden umsetzt. Zusammen sind sie der ganze Widerstand, und die Güte sinkt mit ihrer Summe.',
  'explain.losses.source':
    'Leistung in jedem Element des gelösten Netzwerks; Skin- und Näheeffekt nach den Bessel-Lösungen des runden Drahts (NBS Circular 74 für den ersteren).',
  'explain.losses.range': 'Die angezeigte Frequenz und Temperatur.',
  'explain.losses.omits': 'Metall und schlechte Verbindungen, die nicht in der Zeichnung stehen.',

  'explain.temperature.title': 'Kalt und heiß',
  'explain.temperature.words':
    'Der ganze Schleifenkreis wird noch einmal mit dem Kupfer des kältesten und des heißesten Tages gelöst. Die Induktivität ändert sich kaum, Widerstand und Güte schon.',
  'explain.temperature.source': 'Weichgeglühtes Kupfer, IEC 60028: 0,00393 je Kelvin bei 20 °C.',
  'explain.temperature.range':
    'Kupfer von etwa −60 bis 90 °C; der ganze Schleifenkreis mit einer Temperatur.',
  'explain.temperature.omits':
    'Bewegung des Belags, Drift des Geräts selbst und Kabel mit angegebenen Kennwerten, die bleiben, wie angegeben.',

  'explain.moisture.title': 'Trocken und nass',
  'explain.moisture.words':
    'Der ganze Schleifenkreis wird noch einmal mit der kleinsten und der größten Permittivität gelöst, die das Material des Belags haben kann. Mehr Kapazität hebt die scheinbare Induktivität und senkt die Frequenz.',
  'explain.moisture.source':
    'Kapazität wie bei der Schleife erklärt. Die Spanne der Permittivität steht im Katalog der Beläge.',
  'explain.moisture.range':
    'Eine Schätzung: Die Spanne sagt mehr als die beiden Werte. In einem Belag mit angegebener Leitfähigkeit zählt die Permittivität bei diesen Frequenzen kaum.',
  'explain.moisture.omits':
    'Wasser, das eine Fuge mit schadhaftem Verguss füllt, und Kriechströme durch beschädigte Isolierung.',

  'explain.response.title': 'Verstimmung durch ein Fahrzeug',
  'explain.response.words':
    'Platten und Ringe des Fahrzeugs sind bei diesen Frequenzen vollkommene Leiter: Ströme in ihnen halten das Feld der Schleife draußen. Diese Ströme folgen aus dem Feld, das die Schleife durch das Fahrzeug schickt, und sie senken die Induktivität der Schleife. Das Fahrzeug wird den Fahrstreifen entlanggefahren, ein Zweirad auf fünf Fahrlinien, andere in der Mitte; gezeigt wird der stärkste Augenblick der schlechtesten dieser Fahrlinien.',
  'explain.response.source':
    'Randelemente mit einer Stromfunktion auf jeder Platte (Galerkin-Verfahren); Induktivität eines Rings µ₀R(ln 8R/a − 2), Grover 1946. Geprüft am Spiegelbild einer Schleife unter einem großen Blech.',
  'explain.response.range':
    '20 bis 100 kHz, wo die Eindringtiefe in Stahl etwa 0,1 mm beträgt. Das Netz irrt um etwa ein halbes Prozent, zur kleinen Seite.',
  'explain.response.omits':
    'Eisen an den Rädern, das die Induktivität etwas hebt, und die Lücken eines echten Fahrzeugbodens: daher eine wirksame Höhe über der Bodenfreiheit.',

  'explain.response-inductance.title': 'Änderung der Induktivität',
  'explain.response-inductance.words':
    'Der Schleifenkreis wird einmal mit und einmal ohne Fahrzeug gelöst; gezeigt wird der Unterschied an den Klemmen. Die Frequenz ändert sich relativ um die Hälfte, in die andere Richtung.',
  'explain.response-inductance.source': 'Wie die Verstimmung durch ein Fahrzeug.',
  'explain.response-inductance.range': 'Das Fahrzeug, wo es auf dem Plan steht.',
  'explain.response-inductance.omits': 'Wie bei der Verstimmung durch ein Fahrzeug.',

  'explain.margin.title': 'Vielfaches der Schwelle',
  'explain.margin.words':
    'Die Verstimmung auf der schlechtesten Fahrlinie durch die Ansprechschwelle des Kanals. Über 1 löst das Fahrzeug eine Anforderung aus: ein Zweirad auf jeder Fahrlinie, andere in der Mitte des Fahrstreifens.',
  'explain.margin.source': 'Definition als Verhältnis.',
  'explain.margin.range': 'Die Fahrlinien, die über die Breite des Fahrstreifens versucht werden.',
  'explain.margin.omits': 'Drift, Rauschen und die Toleranz des Geräts selbst: Lassen Sie Reserve.',

  'explain.range.title': 'Plausible Spanne',
  'explain.range.words':
    'Jede Toleranz, angegeben oder üblich, wird um ihren Betrag nach oben und unten verschoben, und jedes Mal wird das wirkliche Modell gelöst. Die Hälfte des Unterschieds ist die halbe Breite dieser Toleranz; unabhängige addieren sich quadratisch. Wo der Wert sich dafür zu stark krümmt, wird er stattdessen ausgewürfelt.',
  'explain.range.source':
    'Fortpflanzung der Unsicherheit wie im Leitfaden zur Angabe der Unsicherheit beim Messen (JCGM 100).',
  'explain.range.range':
    'In neunzehn von zwanzig Fällen, wenn jede Toleranz in neunzehn von zwanzig Fällen gilt.',
  'explain.range.omits':
    'Irrtümer: Eine falsche Windungszahl oder ein falsches Kabel ist keine Toleranz. Toleranzen, die zusammenhängen.',

  'explain.class-margin.title': 'Genormte Prüfplatte',
  'explain.class-margin.words':
    'Für jede Fahrzeugklasse gibt es eine ebene Platte in der Höhe, in der sie an der Normschleife (6 × 6 ft, 3 Windungen, 100 ft Zuleitung) genau den Wert der Klasse ergibt. Hier wird sie wie ein Fahrzeug den Fahrstreifen entlanggefahren.',
  'explain.class-margin.source':
    'Werte der Klassen: NEMA TS 1, Abschnitt 15, aus der Erinnerung an die Norm. Die Größen der Platten sind unsere eigene Annahme.',
  'explain.class-margin.range':
    'Ein Weg, Schleifen zu vergleichen, kein Fahrzeug: was eine Klasse an irgendeiner anderen Schleife bedeutet. Eine ebene Platte spürt eine Fuge genau unter ihrer Mitte kaum: Was ihr dort entgeht, entgeht einem echten Fahrzeug vielleicht nicht.',
  'explain.class-margin.omits': 'Das Prüfverfahren der Norm selbst und die Grenzen für ihre Geräte.',

  'explain.steel-cost.title': 'Was Stahl kostet',
  'explain.steel-cost.words':
    'Eine Bewehrungsmatte ist ein Gitter geschlossener Maschen, eine Platte ein durchgehendes Blech; das Feld der Schleife treibt darin Ströme, die ihre Induktivität senken, Verluste bringen und einem Fahrzeug weniger zu ändern lassen. Der Schleifenkreis wird mit und ohne Stahl gelöst; gezeigt wird der verlorene Anteil.',
  'explain.steel-cost.source':
    'Gekoppelte Stromkreise; Stäbe als gerade Leiterfäden (Rosa 1908; Grover 1946) mit der Impedanz des runden Drahts; Oberflächenimpedanz einer dicken Platte (Ramo, Whinnery & Van Duzer).',
  'explain.steel-cost.range':
    'Stäbe, die an jeder Kreuzung leitend verbunden sind und unter den Drähten liegen: Eine lose gebundene oder beschichtete Matte kostet weniger. Eine Platte mit nicht rechteckigem Umriss zählt als Rechteck gleicher Fläche.',
  'explain.steel-cost.omits':
    'Stäbe, die enden oder sich nicht berühren, Stäbe in zwei Tiefen und was getrennte Stahlteile einander tun. Die Permeabilität ist angenommen.',

  'explain.coupling.title': 'Kopplung zweier Schleifenkreise',
  'explain.coupling.words':
    'Die Gegeninduktivitäten zwischen den Schleifen der beiden Kreise, jede mit ihrem Anteil am Strom ihres Kreises gewichtet, durch das geometrische Mittel der beiden Klemmeninduktivitäten. Stahl unter beiden nimmt etwas davon weg. Zuleitungen im selben Leerrohr kommen dazu; ihr Vorzeichen ist unbekannt, also zählt es zum Nachteil.',
  'explain.coupling.source':
    'Definition; Gegeninduktivitäten nach dem Neumann-Integral in geschlossener Form (Grover 1946); Stahl als Spiegelbild an einer Ebene, eine Matte in ihrer scheinbaren Tiefe. Die übliche Kopplung verdrillter Zuleitungen, 1 nH/m, ist gängige Praxis: ein Fünfzigstel dessen, was zwei gerade Paare nebeneinander hätten.',
  'explain.coupling.range':
    'Schleifen in Luft oder Belag, in jedem Abstand. Über einer Matte ist das, was der Stahl übrig lässt, auf ein Sechstel genau gegen ein Gitter von Stäben unter beiden; Schleifen, die teilweise darüber liegen, zählen teilweise.',
  'explain.coupling.omits':
    'Kapazität zwischen den Kreisen, Anschlussenden in einem Fugenschnitt (geben Sie dafür ein Leerrohr an) und Stahl, der nur unter einem der beiden liegt.',

  'explain.sweep.title': 'Der Bereich, den eine Frequenz überstreicht',
  'explain.sweep.words':
    'Die niedrigste Frequenz ist die der kältesten, der heißesten oder der angegebenen Temperatur ohne etwas über den Schleifen. Die höchste ist die höchste der drei mit dem stärksten Fahrzeug auf seiner besten Fahrlinie: In erster Ordnung hebt ein Fahrzeug die Frequenz um die Hälfte seiner relativen Änderung der Induktivität.',
  'explain.sweep.source': 'Folgt aus f = 1/(2π√(LC)), mit dem bei jeder Temperatur gelösten Schleifenkreis.',
  'explain.sweep.range':
    'Die Fahrzeuge, die über den Schleifenkreis gefahren werden, eines nach dem anderen, und die Temperaturen der Anlage.',
  'explain.sweep.omits':
    'Toleranz und Drift der Kapazität des Geräts selbst (Stufe kalibrieren), Feuchte und mehrere Fahrzeuge zugleich über einem Schleifenkreis.',

  'explain.separation.title': 'Kleinster Abstand zweier Frequenzen',
  'explain.separation.words':
    'Fahrzeuge und Temperatur lassen jeden Kanal einen Bereich überstreichen. Gezeigt wird der kleinste Abstand der beiden Bereiche, 0 wo sie sich überlappen.',
  'explain.separation.source': 'Folgt aus f = 1/(2π√(LC)).',
  'explain.separation.range':
    'Jeder Bereich für sich: Dass ein heißer Tag beide gleich verschiebt, wird nicht zum Vorteil gerechnet.',
  'explain.separation.omits': 'Drift der Kapazitäten der Geräte und Feuchte.',

  'explain.ripple.title': 'Welligkeit von einem Nachbarn, der zugleich läuft',
  'explain.ripple.words':
    'Solange zwei gekoppelte Oszillatoren weiter auseinanderliegen, als ihre Kopplung sie ziehen kann, rasten sie nicht ein: Die Frequenz jedes von ihnen schwankt mit der Schwebung, und sein Gerät liest das als Änderung der Induktivität von ±k. Ein Gerät, das länger misst als eine Schwebung, mittelt das meiste davon weg. Näher als das können sie einrasten, und dann gilt nichts als weggemittelt.',
  'explain.ripple.source':
    'Theorie erster Ordnung zweier schwach gekoppelter Oszillatoren. Geprüft durch Integration der Gleichungen zweier begrenzender Oszillatoren in der Zeit, hier und in einem Netzwerksimulator.',
  'explain.ripple.range':
    'Kopplung von 0,005 bis 0,02, Abstände von 0,4 bis 3 kHz bei 50 kHz: auf 11 % gegen die integrierten Gleichungen, wo Kopplung mal Frequenz unter einem Drittel des Abstands bleibt. Näher als das kann eine hohe Güte stärker schwanken; was nach dem Mitteln über eine Schwebung oder länger bleibt, stimmt auf 15 %.',
  'explain.ripple.omits':
    'Ein stetiger Zug, den ein Nachbar nahe dem Einrasten der mittleren Frequenz gibt, und dass ein Fahrzeug über dem einen das für den anderen ändert; Kopplung über Schaltschränke und Netzteile.',

  'explain.next-lane.title': 'Verkehr auf dem Nachbarfahrstreifen',
  'explain.next-lane.words':
    'Das größte Fahrzeug, das den Nachbarfahrstreifen benutzt, wird ihn entlanggefahren, auf der Fahrlinie, die den Schleifen am nächsten liegt. Seine Verstimmung muss unter der Schwelle bleiben.',
  'explain.next-lane.source': 'Wie die Verstimmung durch ein Fahrzeug.',
  'explain.next-lane.range': 'Die gezeichneten Fahrstreifen.',
  'explain.next-lane.omits': 'Fahrzeuge, die ihren Fahrstreifen verlassen.'
} as const satisfies Partial<Translation>;
