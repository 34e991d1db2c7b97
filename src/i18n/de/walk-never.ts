import type { Translation } from '../message';

/** Keine Anforderung für ein Fahrzeug, das da ist. */
export const walkNever = {
  'walk.never.alive.ask': 'Was zeigt Kanal {number} von {unit} ohne etwas über den Schleifen?',
  'walk.never.alive.runs': 'Er läuft, ohne Fehler',
  'walk.never.alive.fault': 'Einen Fehler der Schleife',
  'walk.never.alive.dark': 'Nichts',
  'walk.never.reach.none':
    'Nichts von dem, was {circuit} erkennen soll, erreicht die Schwelle von {threshold}: Das Fahrzeug „{vehicle}“ antwortet bestenfalls mit {response}.',
  'walk.never.reach.fine':
    'Nach dem Entwurf sieht {circuit} das Fahrzeug „{vehicle}“: bestenfalls {response} über einer Schwelle von {threshold}.',
  'walk.never.reach.fact':
    'Das Fahrzeug „{vehicle}“ antwortet bestenfalls mit {response}: dem {times}-Fachen der Schwelle von {threshold}.',
  'walk.never.test.ask':
    'Halten Sie ein Fahrzeug wie „{vehicle}“ mitten auf den Schleifen an. Zeigt das Gerät es?',
  'walk.never.test.any': 'Halten Sie ein Fahrzeug mitten auf den Schleifen an. Zeigt das Gerät es?',
  'walk.never.delay.none': 'Hier ist keine Verzögerung eingestellt: Nichts hält eine Anforderung zurück.',
  'walk.never.delay.ask':
    'Lassen Sie es länger als die Verzögerung von {delay} stehen. Kommt die Anforderung dann?',
  'walk.never.pulse.none':
    'Der Ausgang hält, solange ein Fahrzeug da ist: Er ist nicht zu kurz, um gesehen zu werden.',
  'walk.never.pulse.ask':
    'Der Ausgang gibt einen Impuls von {pulse}. Kann das Steuergerät eine so kurze Anforderung sehen?',
  'walk.never.output.ask':
    'Während das Gerät das Fahrzeug zeigt: Schaltet sein Ausgang um, an seinen Klemmen gemessen?',
  'walk.never.frequency.ask':
    'Lesen Sie die Frequenz mit leeren Schleifen ab, dann mit dem Fahrzeug. Was tut sie?',
  'walk.never.frequency.rise': 'Das Fahrzeug „{vehicle}“ erhöht sie um etwa {rise}.',
  'walk.never.frequency.rises': 'Sie steigt etwa so viel',
  'walk.never.frequency.less': 'Sie steigt viel weniger',
  'walk.never.frequency.stays': 'Sie bleibt, wo sie ist',
  'walk.never.frequency.unknown': 'Das Gerät zeigt keine Frequenz',
  'walk.never.set.ask': 'Ist Kanal {number} auf eine Schwelle von {threshold} oder weniger eingestellt?',
  'walk.never.elsewhere.none':
    '{circuit} ist hier der einzige Schleifenkreis: Seine Drähte können nicht mit anderen vertauscht sein.',
  'walk.never.elsewhere.ask':
    'Fahren Sie über die Schleifen von {circuits}. Spricht der Kanal von {circuit} auf eine davon an?',
  'walk.never.check':
    'Jedes von zehn Fahrzeugen löst {circuit} aus, eines im Schritttempo und eines nahe am Rand des Fahrstreifens.',
  'walk.never.end.dark': 'Kanal und Gerät zeigen nichts: {unit} hat vielleicht keinen Strom.',
  'walk.never.end.dark.other': 'Weiter mit der Beschwerde „Kein Strom“.',
  'walk.never.end.threshold': 'Nach dem Entwurf kann {circuit} nicht sehen, was verlangt ist.',
  'walk.never.end.threshold.lower':
    'Stellen Sie eine Schwelle von {threshold} ein: die Hälfte dessen, womit das Fahrzeug „{vehicle}“ bestenfalls antwortet. Sehen Sie vorher nach den Fahrstreifen daneben.',
  'walk.never.end.threshold.anew':
    'Windungen, Form, Tiefe und Länge der Zuleitung bestimmen die Antwort: Versuchen Sie sie in der Zeichnung.',
  'walk.never.end.delay':
    'Die Verzögerung von {delay} hält Anforderungen von Fahrzeugen zurück, die eher wegfahren.',
  'walk.never.end.delay.shorter':
    'Machen Sie sie kürzer, als ein Fahrzeug bleibt, oder nehmen Sie sie heraus.',
  'walk.never.end.pulse': 'Das Steuergerät verpasst einen Impuls von {pulse}.',
  'walk.never.end.pulse.longer':
    'Verwenden Sie Anwesenheit, einen längeren Impuls oder einen Eingang des Steuergeräts, der einen Impuls hält.',
  'walk.never.end.controller':
    'Gerät und Ausgang sind in Ordnung: Die Anforderung geht auf dem Weg zum Steuergerät verloren.',
  'walk.never.end.controller.wire':
    'Verfolgen Sie die Drähte des Ausgangs zum Eingang des Steuergeräts und sehen Sie nach, welchen Eingang es beobachtet.',
  'walk.never.end.relay': 'Der Ausgang von {unit} folgt nicht dem, was es erkennt.',
  'walk.never.end.relay.replace':
    'Sehen Sie nach, ob der Ausgang abgeschaltet ist oder zu einem anderen Kanal gehört; sonst Gerät tauschen.',
  'walk.never.end.set': 'Das Gerät ist nicht so eingestellt, wie es hier steht.',
  'walk.never.end.set.as':
    'Stellen Sie Kanal {number} auf eine Schwelle von {threshold} ein, ohne etwas über den Schleifen.'
} as const satisfies Partial<Translation>;
