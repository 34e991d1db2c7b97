import type { Translation } from '../message';

/** Why something that was typed, or a file, is not taken. */
export const refusals = {
  'kind.length': 'Länge',
  'kind.angle': 'Winkel',
  'kind.count': 'Anzahl',
  'kind.frequency': 'Frequenz',
  'kind.inductance': 'Induktivität',
  'kind.capacitance': 'Kapazität',
  'kind.resistance': 'Widerstand',
  'kind.time': 'Zeit',
  'kind.ratio': 'Verhältnis',
  'kind.temperature': 'Temperatur',
  'kind.volume': 'Volumen',
  'kind.speed': 'Geschwindigkeit',
  'kind.pace': 'Arbeitstempo',
  'kind.plain': 'Zahl',

  'refusal.quoted': '„{text}“',
  'refusal.mixedSum':
    'eine Zahl der Summe hat keine Einheit und die anderen haben verschiedene; schreiben Sie auch ihre Einheit dazu',
  'refusal.product':
    'ein Produkt zweier Größen ist selbst keine solche Größe ({kind}); lassen Sie eine der Einheiten weg',
  'refusal.divisionByNought': 'eine Division durch null hat kein Ergebnis',
  'refusal.quotient':
    'eine Division durch eine Größe mit Einheit ergibt keine solche Größe ({kind}); teilen Sie durch eine Zahl ohne Einheit',
  'refusal.empty': 'hier steht nichts; schreiben Sie eine Zahl',
  'refusal.tooLong': 'das ist zu lang; schreiben Sie höchstens {most} Zeichen',
  'refusal.resultTooLarge': 'das Ergebnis ist zu groß',
  'refusal.count': 'eine Anzahl muss eine ganze Zahl sein, null oder mehr',
  'refusal.twoScales':
    'Temperaturen zweier Skalen lassen sich nicht zusammenzählen; verwenden Sie eine Einheit',
  'refusal.noParenthesis': 'eine schließende Klammer fehlt',
  'refusal.noNumberAtEnd': 'am Ende fehlt eine Zahl',
  'refusal.noNumberBefore': 'vor {text} fehlt eine Zahl',
  'refusal.unexpected': '{text} wird dort nicht erwartet',
  'refusal.secondUnit': '{text} folgt auf einen Wert, der schon seine Einheit hat',
  'refusal.unrelated':
    'es ist nicht klar, wie {text} zu dem gehört, was davor steht; setzen Sie + dazwischen oder lassen Sie das Leerzeichen weg',
  'refusal.dash':
    'der Strich zwischen Fuß und Zoll kann verbinden oder abziehen; schreiben Sie 6\'-6" oder 6 ft 6 in, um zu verbinden',
  'refusal.inchesWithoutMark':
    'es ist nicht klar, was malgenommen oder geteilt wird; schreiben Sie die Zoll mit ihrem Zeichen: 6\'-6"',
  'refusal.twelveInches': 'die Zoll hinter den Fuß müssen weniger als 12 sein',
  'refusal.wholeFeet': 'die Fuß vor den Zoll müssen eine ganze Zahl sein',
  'refusal.sign': '{text} ist nicht verständlich',
  'refusal.hyphen':
    '{text} lässt sich auf zwei Arten lesen; schreiben Sie {joined}, oder {apart} für eine Differenz',
  'refusal.noUnits': '{text} ist nicht verständlich; schreiben Sie eine Zahl ohne Einheit',
  'refusal.notAUnit': '{text} ist hier keine Einheit ({kind}); möglich sind {symbols}',
  'refusal.tooLarge': '{text} ist zu groß',
  'refusal.tooSmall': '{text} ist zu klein',
  'refusal.noNumber': '{text} ist keine Zahl',
  'refusal.commaOrGroup':
    '{text} lässt sich auf zwei Arten lesen; schreiben Sie {decimal} mit Punkt oder {whole} ohne Komma',
  'refusal.dotOrGroup':
    '{text} lässt sich auf zwei Arten lesen; schreiben Sie {decimal} mit Komma oder {whole} ohne Punkt'
} as const satisfies Partial<Translation>;
