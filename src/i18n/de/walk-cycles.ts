import type { Translation } from '../message';

/** Zweiräder, die keine Anforderung auslösen. */
export const walkCycles = {
  'walk.cycles.design.none': 'Für {circuit} ist kein Zweirad bekannt.',
  'walk.cycles.design.never':
    'Das Fahrzeug „{vehicle}“ antwortet bestenfalls mit {best}; die Schwelle ist {threshold}.',
  'walk.cycles.design.some':
    'Das Fahrzeug „{vehicle}“ antwortet je nach Weg mit {worst} bis {best}; die Schwelle ist {threshold}.',
  'walk.cycles.design.always':
    'Nach dem Entwurf wird das Fahrzeug „{vehicle}“ auf jedem Weg gesehen: schlechtestens {worst}, das {times}-Fache der Schwelle.',
  'walk.cycles.where.ask': 'Wo fahren die, die verpasst werden?',
  'walk.cycles.where.middle': 'In der Mitte des Fahrstreifens ist die Antwort am kleinsten: {response}.',
  'walk.cycles.where.right': '{offset} rechts der Mitte ist die Antwort am kleinsten: {response}.',
  'walk.cycles.where.left': '{offset} links der Mitte ist die Antwort am kleinsten: {response}.',
  'walk.cycles.where.there': 'Dort',
  'walk.cycles.where.elsewhere': 'Anderswo oder überall',
  'walk.cycles.set.ask': 'Ist Kanal {number} auf eine Schwelle von {threshold} oder weniger eingestellt?',
  'walk.cycles.delay.none': 'Hier ist keine Verzögerung eingestellt: Keine Anforderung ist zu kurz.',
  'walk.cycles.delay.short':
    'Die Verzögerung von {delay} ist kürzer als die {time}, die ein Zweirad mit 30 km/h für {length} braucht.',
  'walk.cycles.delay.ask':
    'Werden die verpasst, die ohne Halt darüberfahren, schneller als die Verzögerung von {delay}?',
  'walk.cycles.delay.fact': 'Auf {length} des Weges ist die Erkennung möglich: {time} bei 30 km/h.',
  'walk.cycles.depth.ask':
    'Ist die Fahrbahn seither überbaut worden, oder liegen die Drähte tiefer als gezeichnet?',
  'walk.cycles.lower.alone':
    'Senken Sie die Schwelle auf {threshold}: Kein Fahrstreifen daneben spricht dagegen.',
  'walk.cycles.lower.keeps':
    'Senken Sie die Schwelle auf {threshold}: Das Fahrzeug „{vehicle}“ in {lane} bleibt dann mit {response} immer noch darunter.',
  'walk.cycles.lower.spoils':
    'Eine Schwelle von {threshold} würde reichen, aber dann löst auch das Fahrzeug „{vehicle}“ in {lane} mit {response} aus.',
  'walk.cycles.check':
    'Fahren Sie zehnmal mit dem Fahrzeug „{vehicle}“ darüber, an beiden Rändern und in der Mitte: zehn Anforderungen.',
  'walk.cycles.end.never':
    '{circuit} kann, wie entworfen und eingestellt, das Fahrzeug „{vehicle}“ nicht sehen.',
  'walk.cycles.end.path': 'Sie fahren dort, wo die Schleife am wenigsten sieht.',
  'walk.cycles.end.shape':
    'Wenn neu geschnitten wird: ein Quadrupol oder eine Diagonalschleife, deren Drähte dort liegen, wo sie fahren. Versuchen Sie es in der Zeichnung.',
  'walk.cycles.end.share':
    'Weniger Schleifen an einem Kanal: Jede hat dann einen größeren Anteil an der Induktivität.',
  'walk.cycles.end.mark':
    'Markieren Sie auf der Fahrbahn, wo Zweiräder am besten gesehen werden: über den Drähten.',
  'walk.cycles.end.set': 'Das Gerät ist unempfindlicher eingestellt, als es hier steht.',
  'walk.cycles.end.delay': 'Die Verzögerung von {delay} ist länger, als ein Zweirad bleibt.',
  'walk.cycles.end.delay.shorter':
    'Verkürzen Sie die Verzögerung oder lassen Sie das Steuergerät ohne sie arbeiten, solange Zweiräder bedient werden sollen.',
  'walk.cycles.end.depth':
    'Die Drähte liegen tiefer, als der Entwurf annimmt: Was darüber ist, antwortet schwächer.',
  'walk.cycles.end.depth.draw':
    'Zeichnen Sie die wahre Tiefe der Fuge und sehen Sie die Antworten noch einmal an.'
} as const satisfies Partial<Translation>;
