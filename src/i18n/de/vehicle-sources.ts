import type { Translation } from '../message';

/** Woher die Maße der Fahrzeuge des Katalogs stammen. */
export const vehicleSources = {
  'source.car':
    'Länge: mittlere Klasse der üblichen europäischen Pkw-Klassen nach Länge (klein 3,7 bis 4,2 m, mittel 4,2 bis 4,6 m, groß 4,6 bis 4,8 m); Breite: allgemeine Praxis, gerundet. Der Pkw der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 5,8 x 2,1 m) ist größer als fast alle. Boden als eine Platte. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat.',
  'source.car-small':
    'Länge: kleine Klasse der üblichen europäischen Pkw-Klassen nach Länge (klein 3,7 bis 4,2 m, mittel 4,2 bis 4,6 m, groß 4,6 bis 4,8 m); Breite: allgemeine Praxis, gerundet. Boden als eine Platte. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat. So hoch wie beim Pkw angenommen.',
  'source.suv':
    'Länge: große Klasse der üblichen europäischen Pkw-Klassen nach Länge (klein 3,7 bis 4,2 m, mittel 4,2 bis 4,6 m, groß 4,6 bis 4,8 m); Breite: allgemeine Praxis, gerundet. Der Pkw der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 5,8 x 2,1 m) ist größer als fast alle. Boden als eine Platte. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat. 7 cm höher als beim Pkw angenommen: Solche Fahrzeuge stehen etwa um so viel höher, allgemeine Praxis.',
  'source.van':
    'Maße: allgemeine Praxis, gerundet, zwischen dem Pkw und dem Lkw der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 5,8 x 2,1 m und 9,2 x 2,4 m). Boden als eine Platte. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat.',
  'source.lorry':
    'Maße: zwischen dem Lkw der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 9,2 x 2,4 m) und dem größten, den die Richtlinie 96/53/EG zulässt (12,00 x 2,55 m), gerundet. Fahrgestell, Motor und zwei Achsen als Platten, Lage und Größe nach allgemeiner Praxis. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat.',
  'source.lorry-articulated':
    'Aufbau: der größte, den die Richtlinie 96/53/EG zulässt, 16,50 x 2,55 m, mit 12,00 m vom Königszapfen bis zum Heck des Aufliegers; zwischen den Zügen WB-12 und WB-15 der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 13,9 x 2,4 m und 16,8 x 2,6 m). Lage und Größe von Rahmen, Motor und Achsen: allgemeine Praxis, aus dem Gedächtnis. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat. Der Boden des Aufliegers liegt etwa 1,2 m hoch und ist oft Holz auf zwei Trägern: als Blech in 1,5 m Höhe angenommen. Zwischen den Achsen ist er es, was eine Schleife verliert.',
  'source.tractor':
    'Vorder- und Hinterteil des Sattelzugs, auseinandergenommen: Maße nach allgemeiner Praxis und wirksame Höhen nach Annahme, wie dort. Dahinter lässt sich ein Anhänger kuppeln.',
  'source.semitrailer':
    'Vorder- und Hinterteil des Sattelzugs, auseinandergenommen: Maße nach allgemeiner Praxis und wirksame Höhen nach Annahme, wie dort. Er ragt 3,3 m über seine Zugmaschine.',
  'source.bus':
    'Maße: der Stadtbus der AASHTO-Tabelle der Bemessungsfahrzeuge (Green Book, 2004: 12,2 x 2,6 m), abgerundet auf gebräuchliche 12 m. Boden und zwei Achsen als Platten, Lage und Größe nach allgemeiner Praxis. Wirksame Höhen: Annahme, über der geometrischen Bodenfreiheit, weil ein wirklicher Unterboden Lücken hat.',
  'source.motorcycle':
    'Maße: gewöhnliche Maschine ihrer Art, gerundet, allgemeine Praxis. Motor und Rahmen als eine Platte, zwei Felgen als Ringe. Platte und Felgenquerschnitt: Annahme, so gewählt, dass die stärkste Verstimmung einer Schleife von 1,8 x 1,8 m mit drei Windungen und 30 m Zuleitung etwa 0,3 % beträgt: die Klasse großes Motorrad nach NEMA TS 1 (0,32 %, aus dem Gedächtnis).',
  'source.motorcycle-small':
    'Maße: gewöhnliche Maschine ihrer Art, gerundet, allgemeine Praxis. Motor als Platte, zwei Felgen als Ringe. Platte und Felgenquerschnitt: Annahme, so gewählt, dass die stärkste Verstimmung einer Schleife von 1,8 x 1,8 m mit drei Windungen und 30 m Zuleitung etwa 0,1 % beträgt: die Klasse kleines Motorrad nach NEMA TS 1 (0,13 %, aus dem Gedächtnis).',
  'source.bicycle':
    'Maße: gewöhnliches Rad, etwa 1,8 x 0,65 m im Leitfaden für Radverkehrsanlagen LTN 1/20, aus dem Gedächtnis, gerundet; Laufräder von 0,68 m, allgemeine Praxis. Zwei Aluminiumfelgen als geschlossene Ringe ohne Verlust, der Rahmen weggelassen. Felgenquerschnitt: Annahme.',
  'source.bicycle-steel':
    'Maße: gewöhnliches Rad, etwa 1,8 x 0,65 m im Leitfaden für Radverkehrsanlagen LTN 1/20, aus dem Gedächtnis, gerundet; Laufräder von 0,68 m, allgemeine Praxis. Zwei Felgen aus Baustahl als geschlossene Ringe, der Rahmen weggelassen. Felgenquerschnitt: Annahme, der der Aluminiumfelgen. Spezifischer Widerstand 0,17 Mikroohmmeter; relative Permeabilität 100: Annahme, 40 bis 400 kommen vor.',
  'source.wheel':
    'Ein einzelnes Laufrad eines Fahrrads, aufrecht und längs des Fahrstreifens: ein kleiner Prüfkörper, der zeigt, wo ein Fahrradrad rollen muss. Durchmesser 0,68 m, allgemeine Praxis; ein geschlossener Ring ohne Verlust, Felgenquerschnitt eine Annahme.',
  'source.class-motorcycle-small':
    'Klasse und Wert: NEMA TS 1, Abschnitt 15, aus dem Gedächtnis. Größe der Platte: Annahme, für ihre Art gewöhnlich, gerundet. Höhe: so bestimmt, dass die Platte, in der Mitte des Fahrstreifens über die Mitte der Normschleife gefahren (6 x 6 ft, Ecken 12 in geschnitten, 3 Windungen 14 AWG, Fuge 1-1/2 in tief, 100 ft Zuleitung 14 AWG, 50 kHz), die Induktivität an den Klemmen an der stärksten Stelle der Überfahrt um 0,13 % ändert. Eine ebene Platte hat keine Räder: Liegt ihre Mitte genau über einer Fuge längs des Fahrstreifens, wie bei einem Quadrupol, so verstimmt sie fast nichts, wo ein Zweirad es täte.',
  'source.class-motorcycle-large':
    'Klasse und Wert: NEMA TS 1, Abschnitt 15, aus dem Gedächtnis. Größe der Platte: Annahme, für ihre Art gewöhnlich, gerundet. Höhe: so bestimmt, dass die Platte, in der Mitte des Fahrstreifens über die Mitte der Normschleife gefahren (6 x 6 ft, Ecken 12 in geschnitten, 3 Windungen 14 AWG, Fuge 1-1/2 in tief, 100 ft Zuleitung 14 AWG, 50 kHz), die Induktivität an den Klemmen an der stärksten Stelle der Überfahrt um 0,32 % ändert. Eine ebene Platte hat keine Räder: Liegt ihre Mitte genau über einer Fuge längs des Fahrstreifens, wie bei einem Quadrupol, so verstimmt sie fast nichts, wo ein Zweirad es täte.',
  'source.class-automobile':
    'Klasse und Wert: NEMA TS 1, Abschnitt 15, aus dem Gedächtnis. Größe der Platte: Annahme, für ihre Art gewöhnlich, gerundet. Höhe: so bestimmt, dass die Platte, in der Mitte des Fahrstreifens über die Mitte der Normschleife gefahren (6 x 6 ft, Ecken 12 in geschnitten, 3 Windungen 14 AWG, Fuge 1-1/2 in tief, 100 ft Zuleitung 14 AWG, 50 kHz), die Induktivität an den Klemmen an der stärksten Stelle der Überfahrt um 3,2 % ändert.'
} as const satisfies Partial<Translation>;
