import type { Translation } from '../message';

/** Arranging, layers, locks, the context menu, the command palette, several things at once. */
export const arrange = {
  'command.select-lane-loops': 'Alle Schleifen dieses Fahrstreifens auswählen',
  'command.lock': 'Sperren oder entsperren',
  'command.unlock-all': 'Alles außer Bildern entsperren',
  'command.hide': 'Ausblenden',
  'command.show-all': 'Alles Ausgeblendete zeigen',
  'command.align-left': 'Linke Kanten ausrichten',
  'command.align-centre': 'Mitten senkrecht übereinander ausrichten',
  'command.align-right': 'Rechte Kanten ausrichten',
  'command.align-top': 'Obere Kanten ausrichten',
  'command.align-middle': 'Mitten auf gleicher Höhe ausrichten',
  'command.align-bottom': 'Untere Kanten ausrichten',
  'command.distribute-x': 'Gleiche Abstände von links nach rechts',
  'command.distribute-y': 'Gleiche Abstände von unten nach oben',
  'command.distribute-lane': 'Gleiche Abstände entlang des Fahrstreifens',
  'command.set-gap': 'Abstand genau setzen …',
  'command.repeat-along-lane': 'Entlang eines Fahrstreifens wiederholen …',
  'command.mirror-x': 'Links und rechts spiegeln',
  'command.mirror-y': 'Oben und unten spiegeln',
  'command.centre-in-lane': 'Mittig in den Fahrstreifen',
  'command.mirror-lane': 'An der Mitte des Fahrstreifens spiegeln',

  'notice.lockedKept': {
    one: 'Ein Ding ist gesperrt und blieb, wie es ist.',
    other: '{count} Dinge sind gesperrt und blieben, wie sie sind.'
  },
  'notice.locked': 'Gesperrt, darum wurde nichts geändert. Strg+L oder die Details entsperren.',
  'notice.hidden': {
    one: 'Ausgeblendet, zählt aber weiter in jeder Angabe. Umschalt+V zeigt es wieder.',
    other: '{count} Dinge sind ausgeblendet, zählen aber weiter in jeder Angabe. Umschalt+V zeigt sie wieder.'
  },
  'notice.layerHidden':
    'Die Ebene {layer} ist ausgeblendet. Was auf ihr liegt, zählt weiter in jeder Angabe.',
  'notice.copied': 'Kopiert: {things}',
  'notice.copiedHere':
    'Nur für dieses Fenster kopiert: der Browser lässt die Seite nicht an die Zwischenablage.',
  'notice.pasteForeign': 'Was in der Zwischenablage ist, gehört zu keinem Plan; es wurde nichts eingefügt.',
  'notice.pasteEmpty': 'Es gibt nichts einzufügen: zuerst etwas auf einem Plan kopieren.',
  'notice.pasteRefused': 'Es wurde nichts eingefügt. {problem}',
  'notice.pasteFull': 'Es wurde nichts eingefügt: die Anlage hat nicht für alles davon Platz.',
  'notice.notAll': {
    one: 'Eines von {all} konnte das nicht annehmen.',
    other: '{count} von {all} konnten das nicht annehmen.'
  },
  'notice.repeated': {
    one: 'Eine von {wanted} Kopien wurde gemacht: für mehr ist kein Platz.',
    other: '{count} von {wanted} Kopien wurden gemacht: für mehr ist kein Platz.'
  },
  'notice.noMirror': 'Ein Bild lässt sich nicht spiegeln und blieb, wie es ist.',
  'notice.sampleFailed':
    'Das Beispiel ließ sich nicht laden. Einmal online gehen und es noch einmal versuchen.',
  'notice.dismiss': 'Schließen',
  'paste.otherVersion': 'Dinge, die eine andere Version des Programms kopiert hat',
  'paste.thisVersion': 'Dinge, die diese kopiert hat',

  'handling.locked': 'Gesperrt: es lässt sich weder verschieben noch ändern.',
  'handling.someLocked': {
    one: 'Eines davon ist gesperrt: es lässt sich weder verschieben noch ändern.',
    other: '{count} davon sind gesperrt: sie lassen sich weder verschieben noch ändern.'
  },
  'handling.layerLocked':
    'Die Ebene {layer} ist gesperrt: was auf ihr liegt, lässt sich weder verschieben noch ändern.',
  'handling.unlock': 'Entsperren',
  'handling.unlockLayer': 'Ebene entsperren',
  'handling.hidden': 'Ausgeblendet, zählt aber weiter in jeder Angabe.',
  'handling.show': 'Einblenden',
  'handling.showLayer': 'Ebene einblenden',
  'handling.lock': 'Sperren',
  'handling.hide': 'Ausblenden',
  'handling.group': 'Sperren und ausblenden',
  'outline.group.road': 'Fahrstreifen und Schleifen',
  'outline.group.mark': 'Zeichen',
  'outline.group.steel': 'Stahl',
  'outline.group.path': 'Fahrwege',
  'outline.group.probe': 'Fahrzeuge',
  'outline.group.underlay': 'Bilder',
  'outline.layer': 'Ebene {layer}: {how}',
  'outline.locked': 'gesperrt',
  'outline.hidden': 'ausgeblendet',
  'announce.selected': 'Ausgewählt: {things}',
  'announce.nothing': 'Nichts ausgewählt',
  'lane.selectLoops': 'Seine Schleifen auswählen',
  'layers.title': 'Ebenen',
  'menu.title': 'Was sich tun lässt',
  'palette.title': 'Alle Befehle'
} as const satisfies Partial<Translation>;
