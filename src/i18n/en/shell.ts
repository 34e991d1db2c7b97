/** The page around the plan: files, undo, dialogs, notices. */
export const shell = {
  'page.title': '{site} – Kerfline',

  'file.group': 'Site file',
  'file.new': 'New',
  'file.open': 'Open',
  'file.save': 'Save',
  'file.saveTitle': 'Save the site to a file (Ctrl+S)',
  'file.saveTo': 'Save to {name} (Ctrl+S); Ctrl+Shift+S saves a copy',
  'file.tooLarge': '{size} MB',
  'file.atMost': 'a site file of at most {size} MB',
  'file.unreadable': 'a file that the browser cannot read: {reason}',
  'file.readable': 'a readable file',
  'file.chosen': 'The file',
  'file.dropHere':
    'Drop a site file to open it, a picture, a PDF or a DXF to lay it under the plan, a table (CSV) for its loops',

  'undo.group': 'Undo and redo',
  'undo.none': 'Nothing to undo',
  'undo.step': 'Undo: {step}',
  'redo.none': 'Nothing to redo',
  'redo.step': 'Redo: {step}',
  'step.change': 'Change {field} of {subject}',

  'saving.saved': 'Saved',
  'saving.saving': 'Saving …',
  'saving.notSaved': 'Not saved',
  'saving.where': 'Your work is kept in this browser as you go. Save it to a file to keep it anywhere else.',

  'units.metric': 'Metric',
  'units.imperial': 'Imperial',
  'units.metricShort': 'm',
  'units.imperialShort': 'ft',

  'help.open': 'Help and keys',
  'settings.open': 'Settings',

  'dialog.close': 'Close',

  'sheet.title': 'Under the plan',
  'sheet.taller': 'More room for this',
  'sheet.lower': 'More room for the plan',

  'term.explain': 'What is this: {term}',

  'caution.title': 'Before anyone cuts the road',
  'caution.traffic': 'Work in live traffic needs its own protection and permission.',
  'caution.mains': 'Units and cabinets carry mains: leave them to licensed people.',
  'caution.dust': 'Sawing makes noise and harmful dust: cut wet, protect eyes, ears and lungs.',
  'caution.gates': 'Keep clear of gates and barriers that can move by themselves.',
  'caution.codes': 'Local codes and licensed practice decide; these figures inform them.',
  'caution.device': 'A loop is never the only safety device of a gate or barrier.',

  'new.title': 'New site',
  'new.intro':
    'Choose the situation that is nearest to yours. What is open now stays under Open, kept in this browser.',

  'refused.title': 'The file was not opened',
  'refused.intro':
    '{name} does not hold a site that can be used. The site that is open has not been touched.',
  'refused.path': 'Where',
  'refused.found': 'Found',
  'refused.expected': 'Expected',
  'refused.whole': 'the whole file',

  'banner.full':
    'Not saved: the storage of this browser is full. Your work is safe only while this page is open.',
  'banner.forbidden':
    'Not saved: this browser does not let the page store anything. Your work is safe only while this page is open.',
  'banner.failed': 'Not saved: the browser’s storage failed. Your work is safe only while this page is open.',
  'banner.silent':
    'Not saved: the browser’s storage does not answer. Your work is safe only while this page is open.',
  'banner.saveToFile': 'Save to a file',
  'banner.changedFile':
    '{name} was changed elsewhere since it was last read or saved here. Nothing was written to it.',
  'banner.saveCopy': 'Save a copy',
  'banner.replaceFile': 'Replace what is there',
  'banner.calculation': 'The calculation stopped twice. The figures shown are not of this drawing.',
  'banner.retry': 'Calculate again',
  'banner.salvage': {
    one: 'Something kept in this browser could not be read. It was put aside unchanged; nothing was written over it.',
    other:
      '{count} things kept in this browser could not be read. They were put aside unchanged; nothing was written over them.'
  },
  'banner.downloadSalvage': 'Download it',
  'banner.recovered': 'Restored as it was at {time}. Older states are under Open.',
  'banner.update': 'A new release is ready.',
  'banner.useUpdate': 'Reload and use it',
  'banner.dismiss': 'Dismiss'
} as const;
