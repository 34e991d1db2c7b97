import type { Translation } from '../message';

/** Eine Anforderung, die nicht weggeht. */
export const walkAlways = {
  'walk.always.occupied.ask':
    'Ist Metall über oder neben {loops}: ein Fahrzeug, eine Platte, ein Container, ein halb offener Torflügel?',
  'walk.always.occupied.holds':
    'Was mit mehr als {release} antwortet, hält eine Anforderung; das Fahrzeug „{vehicle}“ antwortet höchstens mit {response}.',
  'walk.always.shown.ask': 'Was zeigt {unit} für {circuit}?',
  'walk.always.shown.fault': 'Einen Fehler: Die Schleife ist außerhalb des Bereichs',
  'walk.always.shown.detection': 'Ein Fahrzeug',
  'walk.always.shown.nothing': 'Keines von beiden, und doch ist die Anforderung da',
  'walk.always.range.inside':
    'Nach dem Entwurf hat {circuit} {inductance}, und {unit} nimmt {least} bis {most} an: Die Schleife hat sich verändert.',
  'walk.always.range.outside':
    'Nach dem Entwurf hat {circuit} {inductance}, und {unit} nimmt nur {least} bis {most} an.',
  'walk.always.reset.ask':
    'Nichts über den Schleifen: Setzen Sie den Kanal von {circuit} zurück. Was tut die Anforderung?',
  'walk.always.reset.staysAway': 'Sie geht weg und bleibt weg',
  'walk.always.reset.comesBack': 'Sie geht weg und kommt von selbst wieder',
  'walk.always.reset.stays': 'Sie bleibt',
  'walk.always.held.ask': 'Lassen Sie ein Fahrzeug kommen und wegfahren. Wann geht seine Anforderung weg?',
  'walk.always.held.extension': 'Es ist eine Nachlaufzeit von {extension} eingestellt.',
  'walk.always.held.noExtension': 'Hier ist keine Nachlaufzeit eingestellt.',
  'walk.always.held.longest': 'Nach {longest} wird ein stehendes Fahrzeug aufgegeben.',
  'walk.always.held.noLongest':
    'Es ist kein längstes Dauersignal eingestellt: Ein geparktes Fahrzeug hält seine Anforderung, so lange das Gerät sie hält.',
  'walk.always.held.withIt': 'Mit dem Fahrzeug',
  'walk.always.held.after': 'Etwa {extension} später',
  'walk.always.held.reset': 'Erst, wenn der Kanal zurückgesetzt wird',
  'walk.always.beside.ask': 'Dauert die Anforderung, solange Fahrzeuge in {lane} stehen, und geht mit ihnen?',
  'walk.always.beside.release': 'Ab {release} wird eine bestehende Anforderung gehalten.',
  'walk.always.output.ask':
    'Nehmen Sie die Drähte vom Ausgang von {unit} ab. Was tut die Anforderung am Steuergerät?',
  'walk.always.output.goes': 'Sie geht weg',
  'walk.always.output.stays': 'Sie bleibt',
  'walk.always.check':
    '{circuit} hat eine Stunde lang keine Anforderung ohne etwas über den Schleifen und eine für jedes Fahrzeug.',
  'walk.always.end.occupied': 'Etwas über oder neben der Schleife hält die Anforderung, wie es soll.',
  'walk.always.end.occupied.clear': 'Entfernen Sie es und sehen Sie die Anforderung gehen.',
  'walk.always.end.occupied.lasting':
    'Muss es bleiben, setzen Sie {circuit} zurück, während es da ist: Das Gerät zählt es dann zur Fahrbahn.',
  'walk.always.end.range':
    '{circuit} ist nach dem Entwurf keine Schleife für {unit}: Es meldet zur sicheren Seite eine Anforderung.',
  'walk.always.end.range.more':
    'Mehr Windungen oder Schleifen in Reihe erhöhen die Induktivität: Siehe den Rat zu den Windungen.',
  'walk.always.end.range.fewer':
    'Weniger Windungen oder parallele Schleifen senken die Induktivität: Siehe den Rat zu den Windungen.',
  'walk.always.end.extension':
    'Die Nachlaufzeit von {extension} hält die Anforderung; bei dichtem Verkehr endet sie nie.',
  'walk.always.end.extension.shorter':
    'Verkürzen Sie sie oder überlassen Sie sie dem Steuergerät: eines von beiden, nicht beides.',
  'walk.always.end.release': 'Was bleibt, wenn ein Fahrzeug weg ist, liegt über dem Abfall bei {release}.',
  'walk.always.end.release.higher': 'Erhöhen Sie den Abfall; er steht bei {ratio} der Schwelle.',
  'walk.always.end.release.longest':
    'Stellen Sie ein längstes Dauersignal ein, damit das Gerät von selbst aufgibt.',
  'walk.always.end.release.longestIs':
    'Ein längstes Dauersignal von {longest} beendet es von selbst: Sehen Sie nach, ob das Gerät so eingestellt ist.',
  'walk.always.end.relay': 'Der Ausgang von {unit} ist ohne Fahrzeug eingeschaltet.',
  'walk.always.end.relay.contact':
    'Sehen Sie nach, welcher Kontakt verdrahtet ist: der, der für eine Anforderung öffnet, oder der, der schließt, und welcher ohne Strom sicher ist.',
  'walk.always.end.relay.stuck': 'Ist es der richtige, klebt der Kontakt: Gerät tauschen.',
  'walk.always.end.controller': 'Die Anforderung kommt nicht vom Gerät.',
  'walk.always.end.controller.wire':
    'Suchen Sie nach einer Brücke, einer nassen Klemme oder einem Kurzschluss auf den Drähten zum Steuergerät und nach der Einstellung seines Eingangs.'
} as const satisfies Partial<Translation>;
