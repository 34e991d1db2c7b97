/** Keeping, finding again and handing on sites: what stands on the page itself. */
export const keeping = {
  'keeping.copyName': '{name} (copy)',
  'keeping.title.behind': '• {site} (not in its file) – Kerfline',
  'keeping.title.readOnly': '{site} (read only) – Kerfline',
  'keeping.readOnly': 'Read only',
  'keeping.notInFile': 'There are changes that are not in {name} yet.',
  'keeping.inFile': 'Everything is in {name} too.',
  'keeping.more': 'More about files',
  'keeping.saveCopy': 'Save a copy …',
  'keeping.shareLink': 'Share as a link …',
  'keeping.export': 'Export …',
  'keeping.sites': 'Sites and earlier states …',
  'keeping.install': 'Install as a program …',
  'keeping.goBackStep': 'Go back to {time}',
  'keeping.link.name': 'The link',
  'keeping.site': 'The site',
  'keeping.nothingReadable': 'nothing that can be read',

  'refused.newer':
    'It was made by a newer release of this program. What this release understands of it can be looked at; the file itself stays as it is.',
  'refused.lookAtCopy': 'Look at a copy',

  'banner.taken':
    'Another tab has taken this site over, with everything that you did here. Here it can only be looked at.',
  'banner.takenUnsaved':
    'Another tab has taken this site over. Your last changes in this tab are only here: a copy keeps them.',
  'banner.elsewhere': 'This site is open in another tab. Here it can only be looked at.',
  'banner.newerFile':
    'This file was made by a newer release. It is shown as far as this release understands it, and can only be looked at.',
  'banner.takeOver': 'Take over',
  'banner.workOnCopy': 'Work on a copy',
  'banner.otherSite': '“{name}” is open in another tab, so this tab has started with a site of its own.',
  'banner.showOther': 'Show it here too',
  'banner.late.awaited':
    'What is kept in this browser cannot be read yet. This is the sample site; your own opens by itself as soon as it can, unless something is changed here.',
  'banner.late.there':
    '“{name}”, which could not be read when the page was opened, can be read now. What you have done here stays a site of its own.',
  'banner.late.open': 'Open it',
  'banner.newerRelease':
    'Not saved: a newer release of Kerfline keeps this site now. Save to a file, then reload the page.',
  'banner.takenNotSaved': 'Not saved: another tab has this site now.',
  'banner.reminder':
    'For a day or more, changes to this site are kept in this browser only. Clearing the browser’s data would clear them too.',
  'banner.link.opened': 'Opened from a link, as a site of its own. Nothing that you had was replaced.',
  'banner.link.pictures':
    'Opened from a link, as a site of its own, without the pictures that lay under it. Nothing that you had was replaced.',
  'banner.link.cut':
    'The link is not whole: its end is missing. Nothing was opened; ask for the link again, or for a file.',
  'banner.link.damaged':
    'The link was changed on its way and does not add up. Nothing was opened; ask for the link again, or for a file.',
  'banner.link.newer': 'The link was made by a newer release. Nothing was opened; reload the page to get it.'
} as const;
