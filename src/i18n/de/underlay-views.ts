import type { Translation } from '../message';

/** Bilder hereinholen, einpassen, und ihre Angaben. */
export const underlayViews = {
  'underlay.title': 'Bild unter dem Plan',
  'underlay.reading': '{name} wird gelesen …',
  'underlay.kind': 'Es ist weder ein PNG-, JPEG- oder WebP-Bild noch ein PDF.',
  'underlay.svg':
    'Eine SVG-Zeichnung kann Programme enthalten. Als PNG oder PDF gespeichert lässt sie sich unterlegen.',
  'underlay.damaged':
    'Der Browser kann es nicht als Bild lesen; vielleicht ist es beschädigt oder größer als der Speicher.',
  'underlay.damagedPdf': 'Es lässt sich nicht als PDF lesen; vielleicht ist es beschädigt.',
  'underlay.password': 'Das PDF verlangt ein Kennwort. Bitte zuerst ohne Kennwort speichern.',
  'underlay.huge': 'Es hat {size} MB, gelesen werden höchstens {most} MB.',
  'underlay.shrunk':
    '{name} wurde verkleinert, von {fromWidth} × {fromHeight} auf {toWidth} × {toHeight} Pixel, damit die Datei der Anlage klein bleibt.',
  'underlay.packed':
    '{name} wurde stärker gepackt, von {from} MB auf {to} MB, damit die Datei der Anlage klein bleibt.',
  'underlay.pages': 'Welche Seite von {name}?',
  'underlay.pagesIntro': {
    one: 'Die Seite wird als Bild unter den Plan gelegt.',
    other: 'Eine von {count} Seiten wird als Bild unter den Plan gelegt.'
  },
  'underlay.page': 'Seite {number}',
  'underlay.named': '{name}, Seite {number}',
  'underlay.morePages': 'Weitere Seiten zeigen',
  'underlay.rendering': 'Seite {number} wird gezeichnet …',
  'underlay.bar': 'Bild einpassen',
  'underlay.first':
    'Zwei Punkte von {name} anklicken, deren Abstand bekannt ist, etwa die beiden Enden einer Haltlinie.',
  'underlay.noneYet':
    'Ein Bild oder eine PDF-Seite unter den Plan legen: auswählen oder auf dem Plan ablegen.',
  'underlay.another': 'Anderes Bild …',
  'underlay.later': 'Später',
  'underlay.laterTip': 'Das Bild bleibt, wie es ist, und wird als nicht maßstäblich gekennzeichnet',
  'underlay.distance': 'Abstand der Punkte',
  'underlay.apply': 'Einpassen',
  'underlay.again': 'Andere Punkte',
  'underlay.carry': {
    one: 'Was darauf gezeichnet ist, mit verschieben und vergrößern oder verkleinern',
    other: 'Die {count} Dinge, die darauf gezeichnet sind, mit verschieben und vergrößern oder verkleinern'
  },
  'underlay.carryKept':
    'Was in den behaltenen Entwürfen darauf gezeichnet ist, mit verschieben und vergrößern oder verkleinern',
  'underlay.carryDesigns': {
    one: 'Der behaltene Entwurf ändert sich mit.',
    other: 'Die {count} behaltenen Entwürfe ändern sich mit.'
  },
  'underlay.carryWarning': 'Maße der Schleifen und Breiten der Fahrstreifen ändern sich mit, und ihre Werte.',
  'underlay.impossible': 'Das Bild, oder was darauf gezeichnet ist, würde zu groß oder zu klein.',
  'underlay.turn': 'Bild drehen',
  'underlay.turn.not': 'gar nicht',
  'underlay.turn.x': 'Punkte liegen längs x',
  'underlay.turn.y': 'Punkte liegen längs y',
  'underlay.turn.lane': 'Punkte liegen längs {lane}',
  'underlay.scaled':
    'Eingepasst: {distance} zwischen den Punkten. {name} ist auf dem Plan {width} breit und {height} hoch.',
  'underlay.done': 'Fertig',
  'underlay.step.scale': 'Bild einpassen',
  'underlay.step.scaleAll': 'Bild und Zeichnung einpassen',
  'underlay.step.lock': 'Bild sperren',
  'underlay.step.unlock': 'Bild entsperren',
  'underlay.step.hide': 'Bild ausblenden',
  'underlay.step.unhide': 'Bild einblenden',
  'underlay.step.remove': 'Bild entfernen',
  'underlay.step.lines.scale': 'Linien einpassen',
  'underlay.step.lines.scaleAll': 'Linien und Zeichnung einpassen',
  'underlay.step.lines.lock': 'Linien sperren',
  'underlay.step.lines.unlock': 'Linien entsperren',
  'underlay.step.lines.hide': 'Linien ausblenden',
  'underlay.step.lines.unhide': 'Linien einblenden',
  'underlay.step.lines.remove': 'Linien entfernen',
  'underlay.name': 'Bezeichnung',
  'underlay.opacity': 'Deckkraft',
  'underlay.opacityTyped': 'Deckkraft, getippt',
  'underlay.width': 'Breite auf dem Plan',
  'underlay.height': 'Höhe auf dem Plan',
  'underlay.pixel': 'Ein Pixel',
  'underlay.x': 'Mitte x',
  'underlay.y': 'Mitte y',
  'underlay.rotation': 'Drehung',
  'underlay.locked': 'Gesperrt',
  'underlay.hidden': 'Ausgeblendet',
  'underlay.whyLocked':
    'Es ist gesperrt, damit es beim Zeichnen nicht verrutscht. Alt und ein Klick wählen, was darunter liegt; entsperrt lässt es sich ziehen.',
  'underlay.size': '{width} × {height} Pixel, {size} MB in der Datei',
  'underlay.scaledBy': 'Eingepasst über zwei Punkte im Abstand von {distance}.',
  'underlay.estimate':
    'Nicht maßstäblich: Die Größe ist geschätzt, bis zwei Punkte und ihr Abstand angegeben sind.',
  'underlay.linesScale': 'Im Maßstab der Zeichnung, aus der sie kommen.',
  'underlay.lineUnit': 'Eine Einheit der Zeichnung',
  'underlay.linesSize': {
    one: '{count} Linie mit {points} Punkten.',
    other: '{count} Linien mit {points} Punkten.'
  },
  'underlay.scale': 'Über zwei Punkte einpassen',
  'underlay.replace': 'Ersetzen …',
  'underlay.choose': 'Bild wählen …',
  'underlay.remove': 'Entfernen'
} satisfies Partial<Translation>;
