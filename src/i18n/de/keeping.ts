/** Keeping, finding again and handing on sites: what stands on the page itself. */
import type { keeping as english } from '../en/keeping';

export const keeping = {
  'keeping.copyName': '{name} (Kopie)',
  'keeping.title.behind': '• {site} (nicht in der Datei) – Kerfline',
  'keeping.title.readOnly': '{site} (nur lesen) – Kerfline',
  'keeping.readOnly': 'Nur lesen',
  'keeping.notInFile': 'Es gibt Änderungen, die noch nicht in {name} stehen.',
  'keeping.inFile': 'Alles steht auch in {name}.',
  'keeping.more': 'Mehr zu Dateien',
  'keeping.saveCopy': 'Kopie sichern …',
  'keeping.shareLink': 'Als Link weitergeben …',
  'keeping.export': 'Exportieren …',
  'keeping.sites': 'Anlagen und frühere Stände …',
  'keeping.install': 'Als Programm installieren …',
  'keeping.goBackStep': 'Zurück zum Stand von {time}',
  'keeping.link.name': 'Der Link',
  'keeping.site': 'Die Anlage',
  'keeping.nothingReadable': 'nichts Lesbares',

  'refused.newer':
    'Sie stammt von einer neueren Version dieses Programms. Was diese Version davon versteht, kann angesehen werden; die Datei selbst bleibt, wie sie ist.',
  'refused.lookAtCopy': 'Kopie ansehen',

  'banner.taken':
    'Ein anderer Tab hat diese Anlage übernommen, mit allem, was Sie hier getan haben. Hier kann sie nur angesehen werden.',
  'banner.takenUnsaved':
    'Ein anderer Tab hat diese Anlage übernommen. Ihre letzten Änderungen stehen nur hier: Eine Kopie bewahrt sie.',
  'banner.elsewhere': 'Diese Anlage ist in einem anderen Tab geöffnet. Hier kann sie nur angesehen werden.',
  'banner.newerFile':
    'Diese Datei stammt von einer neueren Version. Sie wird gezeigt, soweit diese Version sie versteht, und kann nur angesehen werden.',
  'banner.takeOver': 'Übernehmen',
  'banner.workOnCopy': 'An einer Kopie arbeiten',
  'banner.otherSite':
    '„{name}“ ist in einem anderen Tab geöffnet; dieser Tab hat deshalb mit einer eigenen Anlage begonnen.',
  'banner.showOther': 'Auch hier zeigen',
  'banner.late.awaited':
    'Was dieser Browser aufbewahrt, lässt sich noch nicht lesen. Dies ist die Beispielanlage; Ihre eigene öffnet sich von selbst, sobald es geht, wenn hier nichts geändert wird.',
  'banner.late.there':
    '„{name}“ war beim Öffnen der Seite nicht zu lesen und ist jetzt da. Was Sie hier getan haben, bleibt eine eigene Anlage.',
  'banner.late.open': 'Öffnen',
  'banner.newerRelease':
    'Nicht gesichert: Eine neuere Version von Kerfline bewahrt diese Anlage jetzt auf. Sichern Sie in eine Datei und laden Sie die Seite neu.',
  'banner.takenNotSaved': 'Nicht gesichert: Ein anderer Tab hat diese Anlage jetzt.',
  'banner.reminder':
    'Seit einem Tag oder länger stehen Änderungen an dieser Anlage nur in diesem Browser. Wer die Daten des Browsers löscht, löscht auch sie.',
  'banner.link.opened': 'Aus einem Link geöffnet, als eigene Anlage. Nichts, was Sie hatten, wurde ersetzt.',
  'banner.link.pictures':
    'Aus einem Link geöffnet, als eigene Anlage, ohne die Bilder, die darunterlagen. Nichts, was Sie hatten, wurde ersetzt.',
  'banner.link.cut':
    'Der Link ist nicht vollständig: Sein Ende fehlt. Es wurde nichts geöffnet; bitten Sie noch einmal um den Link oder um eine Datei.',
  'banner.link.damaged':
    'Der Link wurde unterwegs verändert und geht nicht auf. Es wurde nichts geöffnet; bitten Sie noch einmal um den Link oder um eine Datei.',
  'banner.link.newer':
    'Der Link stammt von einer neueren Version. Es wurde nichts geöffnet; laden Sie die Seite neu, um sie zu bekommen.'
} satisfies Record<keyof typeof english, string>;
