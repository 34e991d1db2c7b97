import type { Translation } from '../message';

/** Ein stehendes Fahrzeug, das seine Anforderung verliert. */
export const walkDrops = {
  'walk.drops.mode.presence':
    'Der Ausgang steht auf Anwesenheit: Er sollte halten, solange ein Fahrzeug steht.',
  'walk.drops.mode.pulse': 'Der Ausgang ist auf einen Impuls von {pulse} je Fahrzeug eingestellt.',
  'walk.drops.which.ask': 'Welche Fahrzeuge verlieren ihre Anforderung?',
  'walk.drops.which.high': 'Hohe: Lkw, Anhänger, Busse',
  'walk.drops.which.all': 'Auch Pkw oder Zweiräder',
  'walk.drops.gap.found':
    'Zwischen den Achsen fällt das Fahrzeug „{vehicle}“ auf {length} seines Weges auf {response}; unter {release} endet die Anforderung.',
  'walk.drops.gap.none': 'Nach dem Entwurf geht kein Fahrzeug zwischen den Achsen verloren.',
  'walk.drops.gap.height':
    'Nach dem Entwurf geht kein Fahrzeug zwischen den Achsen verloren: Ein Boden, so groß wie der eines Pkw, löst bis {height} über der Fahrbahn aus.',
  'walk.drops.howLong.ask': 'Nach welcher Zeit geht die Anforderung verloren?',
  'walk.drops.howLong.longest': 'Das längste Dauersignal ist {longest}.',
  'walk.drops.howLong.noLongest': 'Es ist kein längstes Dauersignal eingestellt.',
  'walk.drops.howLong.atOnce': 'Sofort oder nach Sekunden',
  'walk.drops.howLong.after': 'Nach etwa {longest}',
  'walk.drops.howLong.later': 'Nach vielen Minuten oder Stunden',
  'walk.drops.howLong.any': 'Irgendwann',
  'walk.drops.held':
    'Das Fahrzeug „{vehicle}“ antwortet mit {response}: etwa {time} gehalten, ehe das Gerät es für Fahrbahn hält.',
  'walk.drops.place.ask': 'Wo steht das Fahrzeug?',
  'walk.drops.place.zone': 'Das Fahrzeug „{vehicle}“ wird auf {length} seines Weges erkannt.',
  'walk.drops.place.over': 'Über den Schleifen',
  'walk.drops.place.beside': 'Davor, dahinter oder daneben',
  'walk.drops.restart.ask':
    'Wenn es auftritt: Startet {unit} neu, oder fallen andere Anforderungen zugleich ab?',
  'walk.drops.check':
    'Lassen Sie je ein Fahrzeug jeder Art eine halbe Stunde auf {circuit} stehen: Die Anforderung bleibt, bis es wegfährt.',
  'walk.drops.end.pulse': 'Der Ausgang tut, was eingestellt ist: ein Impuls von {pulse}, danach nichts.',
  'walk.drops.end.pulse.presence':
    'Stellen Sie den Ausgang auf Anwesenheit, wo ein stehendes Fahrzeug gehalten werden muss.',
  'walk.drops.end.gap':
    'Das Fahrzeug „{vehicle}“ ist in der Mitte zu hoch: Zwischen den Achsen geht es verloren.',
  'walk.drops.end.gap.release': 'Ein Abfall unter {release} würde es halten; die Schwelle ist {threshold}.',
  'walk.drops.end.gap.extension':
    'Bei einem, das fährt, überbrückt eine Nachlaufzeit {length}; jetzt sind es {extension}.',
  'walk.drops.end.gap.longer':
    'Wenn neu geschnitten wird: eine Schleife, die länger ist als der Achsabstand, oder eine zweite in Reihe.',
  'walk.drops.end.longest': 'Das längste Dauersignal von {longest} beendet die Anforderung.',
  'walk.drops.end.longest.more': 'Machen Sie es länger, als hier jemand wartet, oder nehmen Sie es heraus.',
  'walk.drops.end.adapted':
    'Das Gerät hält ein stehendes Fahrzeug für einen Teil der Fahrbahn, mit einer Zeitkonstante von {time}.',
  'walk.drops.end.adapted.lower':
    'Eine Schwelle unter {threshold} oder eine Schleife, die stärker antwortet, hält es länger.',
  'walk.drops.end.adapted.other':
    'Wo Fahrzeuge stundenlang warten, ein Gerät verwenden, das sich während der Erkennung langsamer anpasst.',
  'walk.drops.end.place': 'Das Fahrzeug steht, wo die Schleifen nicht hinreichen.',
  'walk.drops.end.place.line':
    'Sehen Sie nach, wo gehalten wird und warum: Haltlinie, Tor, Sicht. Versetzen Sie eher die Linie als die Schleife, wenn das reicht.',
  'walk.drops.end.place.longer':
    'Wenn neu geschnitten wird: eine längere Schleife oder eine weitere dort, wo sie stehen.',
  'walk.drops.end.restart': '{unit} startet neu und gleicht sich ab, während das Fahrzeug dort steht.',
  'walk.drops.end.restart.supply':
    'Sehen Sie nach der Versorgung: Einbrüche, wenn ein Antrieb oder eine Lampe startet, eine lose Klemme, ein zu kleines Netzteil.',
  'walk.drops.end.restart.empty': 'Bis dahin nach jedem Einbruch zurücksetzen, ohne etwas über den Schleifen.'
} as const satisfies Partial<Translation>;
