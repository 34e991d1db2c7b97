import type { Translation } from '../message';

/** The turns adviser. */
export const advice = {
  'advice.title': 'Windungen und Draht für Schleifenkreis {name}',
  'advice.least': 'Kleinste Induktivität',
  'advice.most': 'Größte Induktivität',
  'advice.q': 'Kleinste Güte',
  'advice.scope': 'Ändern',
  'advice.allLoops': 'alle {count} Schleifen gleich',
  'advice.onlyLoop': 'nur {name}',
  'advice.window':
    'Induktivität an den Klemmen des Geräts. Das Fenster beginnt nach gängiger Praxis mit 80 bis 300 µH, innerhalb dessen, was das Gerät annimmt: genug, um die Zuleitung zu überwiegen, nicht so viel, dass die Kapazität der Wicklung bestimmt.',
  'advice.qSource':
    'Mit einer Güte unter 5 läuft ein Gerät womöglich nicht: NEMA TS 1 und TS 2, aus der Erinnerung an die Norm.',
  'advice.asking': 'Jede Wahl wird gewickelt und gelöst …',
  'advice.failed': 'Die Berechnung ist fehlgeschlagen: {reason}',
  'advice.none': 'Für diesen Schleifenkreis ist kein Vorschlag möglich.',

  'advice.best': 'Empfohlen: {choice}.',
  'advice.nearest': 'Nichts erfüllt den Wunsch. Am nächsten: {choice}.',
  'advice.choice': { one: '{count} Windung {wire}', other: '{count} Windungen {wire}' },
  'advice.whyFewer': 'Die wenigsten Windungen, die genügen; mit einer weniger: {objection}.',
  'advice.whyOne': 'Eine einzige Windung genügt.',
  'advice.whyEnough': 'Eine Windung weniger würde auch genügen, aber nicht so gut.',
  'advice.whyWire.only': 'Kein anderer Draht schafft es mit so wenigen Windungen.',
  'advice.whyWire.drawn': 'Der Draht ist der gezeichnete: Seine Güte ist das {ratio}-fache der kleinsten.',
  'advice.whyWire.thinnest':
    'Der dünnste Draht mit reichlicher Güte, dem {ratio}-fachen der kleinsten; er lässt die größte Überdeckung.',
  'advice.whyWire.highest-q': 'Der Draht mit der höchsten Güte, dem {ratio}-fachen der kleinsten.',

  'advice.wire': 'Draht',
  'advice.table': 'Jede Windungszahl dieses Drahts',
  'advice.turns': 'Windungen',
  'advice.cover': 'Überdeckung',
  'advice.length': 'Draht',
  'advice.resonance': 'Resonanz',
  'advice.resonanceTitle': 'Niedrigste Eigenresonanz durch Betriebsfrequenz',
  'advice.verdict': 'Urteil',
  'advice.good': 'gut',
  'advice.chosen': 'empfohlen',
  'advice.drawn': 'wie gezeichnet',
  'advice.select': '{choice} wählen',
  'advice.use': '{choice} übernehmen',
  'advice.step': '{choice} in {name} übernehmen',

  'advice.no.inductance-low': 'L von {value} liegt unter {limit}',
  'advice.no.inductance-high': 'L von {value} liegt über {limit}',
  'advice.no.q-low': 'Güte von {value} liegt unter {limit}',
  'advice.no.slot-narrow': 'der Draht, {value}, passt nicht in eine Fuge von {limit} Breite',
  'advice.no.slot-full': 'die Drähte ragen {value} aus der Fuge',
  'advice.no.cover-thin': 'Überdeckung von {value} liegt unter {limit}',
  'advice.no.lead-in-heavy': 'nur {value} der Induktivität gehört den Schleifen: die Zuleitung überwiegt sie',
  'advice.no.resonance-near': 'die Resonanz ist nur das {value}-fache der Betriebsfrequenz',

  'advice.thumb': 'Was Faustregeln sagen',
  'advice.thumbRule':
    'L in µH ≈ (P/4)(N² + N), P in Fuß, aus der Erinnerung an FHWA-IP-90-002, Kapitel 2; addiert, wie die Schleifen verdrahtet sind, und neben das Modell gestellt.',
  'advice.thumbTurns': {
    one: 'Danach bräuchte es {count} Windung.',
    other: 'Danach bräuchte es {count} Windungen.'
  },
  'advice.thumbNone': 'Nach ihr fällt keine Windungszahl in das Fenster.',
  'advice.thumbLeadIn': {
    one: 'Schleifen mindestens so groß wie die {inductance} der Zuleitung, nach gängiger Praxis: ab {count} Windung.',
    other:
      'Schleifen mindestens so groß wie die {inductance} der Zuleitung, nach gängiger Praxis: ab {count} Windungen.'
  },
  'advice.thumbShape': 'Die Regel sagt nichts über Schleifen mit zwei Feldern.',
  'advice.thumbByRule': 'Nach der Regel',
  'advice.thumbByModel': 'Nach dem Modell',
  'advice.thumbError': 'Fehler'
} as const satisfies Partial<Translation>;
