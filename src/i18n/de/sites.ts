/** The list of sites and earlier states, the link, and what a newer file is offered. */
import type { Translation } from '../message';

export const sites = {
  'open.title': 'Anlage öffnen',
  'open.file': 'Datei öffnen …',
  'open.import': 'Linien oder Schleifen importieren …',
  'open.drop': 'Sie können eine Datei auch irgendwo auf der Seite fallen lassen.',
  'open.kept': 'In diesem Browser aufbewahrt',
  'open.looking': 'Wird gesucht …',
  'open.nothingKept': 'Noch nichts: Eine Anlage wird ab ihrer ersten Änderung hier aufbewahrt.',
  'open.cannotLook': 'Dieser Browser lässt die Seite nicht in seinen Speicher sehen.',
  'sites.where':
    'Jede Anlage wird in diesem Browser auf diesem Gerät aufbewahrt, mit früheren Ständen. Sichern Sie in eine Datei, was andere brauchen oder was diesen Browser überdauern soll.',
  'sites.here': 'hier geöffnet',
  'sites.elsewhere': 'in einem anderen Tab geöffnet',
  'sites.size': '{size} kB',
  'sites.file': 'Datei: {name}',
  'sites.rename': 'Umbenennen',
  'sites.name': 'Neuer Name',
  'sites.take': 'Namen übernehmen',
  'sites.duplicate': 'Duplizieren',
  'sites.delete': 'Löschen',
  'sites.deleted': '„{name}“ liegt im Papierkorb.',
  'sites.undo': 'Rückgängig',
  'sites.states': { one: '{count} Stand', other: '{count} Stände' },
  'sites.statesOf': 'Stände von {name}',
  'sites.now': 'wie es jetzt ist',
  'sites.minutes': { one: 'vor {count} Minute', other: 'vor {count} Minuten' },
  'sites.hours': { one: 'vor {count} Stunde', other: 'vor {count} Stunden' },
  'sites.days': { one: 'vor {count} Tag', other: 'vor {count} Tagen' },
  'sites.openCopy': 'Als Kopie öffnen',
  'sites.goBack': 'Dorthin zurück',
  'sites.bin': { one: 'Papierkorb: {count} Anlage', other: 'Papierkorb: {count} Anlagen' },
  'sites.binText': 'Was hier liegt, wird nach 30 Tagen endgültig gelöscht.',
  'sites.binSince': 'gelöscht {time}',
  'sites.restore': 'Herausnehmen',
  'sites.deleteForGood': 'Endgültig löschen',
  'sites.emptyBin': 'Papierkorb leeren',
  'sites.asides': { one: 'Beiseitegelegt: {count} Stück', other: 'Beiseitegelegt: {count} Stücke' },
  'sites.asidesText': 'Was sich beim Öffnen nicht lesen ließ, unverändert.',
  'sites.downloadAside': 'Herunterladen',
  'sites.dropAside': 'Endgültig löschen',
  'sites.failed': 'Das hat nicht geklappt: {reason}',

  'share.title': 'Als Link weitergeben',
  'share.making': 'Der Link wird geschrieben …',
  'share.intro':
    'Die ganze Anlage steht in diesem Link ({size} kB); nichts wird irgendwohin gesendet, bis Sie ihn weitergeben. Wer ihn öffnet, bekommt eine eigene Anlage.',
  'share.pictures': {
    one: 'Das Bild unter dem Plan ist zu groß für einen Link und fehlt darin. Eine Datei enthält es.',
    other:
      'Die {count} Bilder unter dem Plan sind zu groß für einen Link und fehlen darin. Eine Datei enthält sie.'
  },
  'share.link': 'Link',
  'share.copy': 'Link kopieren',
  'share.copied': 'Kopiert.',
  'share.copyByHand':
    'Der Browser lässt die Seite nicht kopieren: Der Link ist markiert, kopieren Sie ihn von Hand.',
  'share.send': 'Weitergeben …',
  'share.tooLong':
    'Der Link wäre {length} kB lang; ab {most} kB schneiden Mail- und Chatprogramme Links ab. Geben Sie stattdessen eine Datei weiter.',
  'share.failed':
    'Der Link ließ sich in diesem Browser nicht schreiben. Geben Sie stattdessen eine Datei weiter.'
} as const satisfies Partial<Translation>;
