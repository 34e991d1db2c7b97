import type { Translation } from '../message';

/** How it was computed: vehicles along a lane, and calls in time. */
export const explainPasses = {
  'explain.in.release': 'Abfallschwelle',
  'explain.in.offset': 'Rechts der Mitte des Fahrstreifens',
  'explain.in.drop': 'Stärkstes −ΔL/L auf dieser Fahrlinie',
  'explain.in.lowestPlate': 'Wirksame Höhe der tiefsten Platte',
  'explain.in.zone': 'Länge des Erfassungsbereichs',
  'explain.in.ruleOfThumb': 'Zwei Drittel der kürzeren Schleifenseite',
  'explain.in.detectionHeight': 'Erfassungshöhe',
  'explain.in.delay': 'Verzögerung',
  'explain.in.extension': 'Nachlaufzeit',
  'explain.in.adaptation': 'Zeitkonstante der Anpassung',
  'explain.in.calls': 'Anforderungen',

  'explain.path-response.title': 'Verstimmung auf einer Fahrlinie entlang des Fahrstreifens',
  'explain.path-response.words':
    'Das Fahrzeug wird in diesem Abstand von der Mitte den Fahrstreifen entlanggefahren; gezeigt wird die stärkste Abnahme der Klemmeninduktivität unterwegs. Ein Fahrzeug, das seinen Fahrstreifen füllt, wird in der Mitte und mit seiner Seite an jedem Rand versucht, ein Zweirad auf fünf Fahrlinien, der Verkehr des Nachbarfahrstreifens in dessen Mitte und an dessen nahem Rand.',
  'explain.path-response.source':
    'Wie die Verstimmung durch ein Fahrzeug; an Orten, die dichter liegen als die Höhe des Fahrzeugs über der Fahrbahn, dazwischen interpoliert.',
  'explain.path-response.range':
    'Auf ein halbes Prozent der Verstimmung oder zwei Millionstel, gegen das dort aufgestellte Fahrzeug. Über Stahl einige Prozent.',
  'explain.path-response.omits':
    'Fahrzeuge, die schräg fahren. Ein Gelenkfahrzeug bleibt in der Kurve gerade.',

  'explain.detection-zone.title': 'Erfassungsbereich',
  'explain.detection-zone.words':
    'Vorwärts gefahren, lässt das Fahrzeug den Kanal dort ansprechen, wo seine Verstimmung die Schwelle erreicht, und abfallen, wo sie unter die Abfallschwelle sinkt. Der Bereich ist der Weg der Fahrzeugmitte dazwischen; das Fahrzeug selbst reicht auf beiden Seiten um seine halbe Länge weiter.',
  'explain.detection-zone.source': 'Folgt aus der Verstimmung entlang des Fahrstreifens.',
  'explain.detection-zone.range': 'So langsam, dass das Gerät im Bereich oft misst.',
  'explain.detection-zone.omits':
    'Messzeit und nacheinander laufende Abfrage: an beiden Enden bis zu einen Umlauf später.',

  'explain.detection-height.title': 'Erfassungshöhe',
  'explain.detection-height.words':
    'Eine Platte, so groß wie der Boden eines Pkw (1,6 × 4,2 m), wird über der Schleife angehoben, bis sie an ihrer besten Stelle gerade noch eine Anforderung auslöst. Daneben steht die Faustregel, zwei Drittel der kürzeren Schleifenseite, die weder Schwelle noch Windungen noch Zuleitung kennt.',
  'explain.detection-height.source':
    'Wie die Verstimmung durch ein Fahrzeug, in dreizehn Höhen und dazwischen. Die Faustregel ist gängige Praxis.',
  'explain.detection-height.range':
    '5 cm bis 3 m, auf ein Prozent; über Stahl einige Prozent, mit dem groben Netz. Das Netz der Platte ist das für 0,45 m.',
  'explain.detection-height.omits':
    'Achsen und Motoren, die tiefer liegen als der Boden: Ein Lkw wird auch erkannt, wo sein Boden allein es nicht würde.',

  'explain.calls.title': 'Anforderungen mit dem Verkehr der Anlage',
  'explain.calls.words':
    'Jedes Fahrzeug fährt seinen Fahrstreifen entlang; die Verstimmung x jedes Schleifenkreises ist die Summe über die Fahrzeuge. Der Kanal erkennt ab der Schwelle bis zum Abfall, gegen R, was er für die leere Fahrbahn hält: R folgt einem stehenden Fahrzeug langsam und fällt rasch zurück, wenn es wegfährt. Verzögerung, Nachlaufzeit, längstes Dauersignal oder Impuls machen daraus die Anforderung. Die Wahrheit ist ein Fahrzeug der bedienten Fahrstreifen, das mit seinem Umriss über den Schleifen ist.',
  'explain.calls.source':
    'Zeiten: gängige Praxis, alle änderbar. Folgen: Newells vereinfachtes Folgemodell (2002). Die Zeiten der Ereignisse sind Nullstellen in geschlossener Form, nicht abgetastet.',
  'explain.calls.range':
    'Verkehr, der auf seinem Fahrstreifen bleibt; derselbe Startwert ergibt denselben Verkehr.',
  'explain.calls.omits':
    'Dass zwei Fahrzeuge nah beieinander ihre Verstimmungen gegenseitig ändern, den Abfragezyklus des Geräts, Rauschen und Schwebung.'
} as const satisfies Partial<Translation>;
