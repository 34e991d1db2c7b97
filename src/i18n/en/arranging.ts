/** What the command palette, the context menu, layers, steps and the arranging dialog say. */
export const arranging = {
  'palette.search': 'What do you want to do?',
  'palette.count': { one: '{count} command', other: '{count} commands' },
  'palette.none': 'No command has these words.',
  'palette.notNow': 'not now',
  'palette.how': 'Arrow keys choose, Enter runs it.',

  'action.new': 'New site',
  'action.open': 'Open a site or a file',
  'action.save': 'Save to a file',
  'action.save-copy': 'Save a copy to a file',
  'action.share': 'Share by a link',
  'action.settings': 'Settings',
  'action.help': 'Help and keys',
  'action.glossary': 'Terms of the trade',
  'action.ideas': 'Ideas to try',
  'action.palette': 'All commands',
  'action.steps': 'Undo several steps',
  'action.layers': 'Layers',
  'action.unit-system': 'Change between metres and feet',
  'action.view': 'Show the table: {view}',
  'action.sample': 'Open the sample: {sample}',

  'sample.advance-loops': 'Advance loops',
  'sample.bicycle-stop-line': 'Bicycles at a stop line',
  'sample.calls-that-miscount': 'Calls that miscount',
  'sample.car-park-counting-pair': 'Counting pair of a car park',
  'sample.driveway-gate': 'Driveway gate',
  'sample.exit-lanes-that-beat': 'Exit lanes that beat',
  'sample.loading-bay-on-steel': 'Loading bay on steel',
  'sample.stop-line-two-lanes': 'Stop line with two lanes',

  'layers.intro': 'Hidden layers still count in every figure; locked ones stay as they are.',
  'layers.shown': 'Show {layer}',
  'layers.locked': 'Lock {layer}',
  'layers.show': 'Shown',
  'layers.lock': 'Locked',
  'layers.layer': 'Layer',

  'steps.title': 'Undo several steps',
  'steps.intro':
    'Undoes the step you choose and everything after it; redo brings it back. Reloading the page ends this list.',
  'steps.none': 'There is nothing to undo.',
  'steps.count': { one: 'the last step', other: 'the last {count} steps' },

  'gap.title': 'Set the gap exactly',
  'gap.intro':
    'The gap is between the edges that face each other. What is locked stays; otherwise the first one does.',
  'gap.row': 'Along',
  'gap.x': 'From left to right',
  'gap.y': 'From bottom to top',
  'gap.lane': 'Lane {name}',
  'gap.gap': 'Gap',
  'gap.set': 'Set the gap',
  'gap.same': 'They have this gap already.',
  'repeat.title': 'Repeat along a lane',
  'repeat.intro':
    'Copies follow the lane, turn with it and are wired among themselves as the originals are. They end where the lane ends.',
  'repeat.lane': 'Lane',
  'repeat.count': 'Copies',
  'repeat.pitch': 'Pitch, from one to the next',
  'repeat.back': 'A negative pitch goes against the direction of travel.',
  'repeat.make': 'Make the copies',

  'several.align': 'Align and distribute',
  'several.layer': 'Layer',
  'several.counts': 'Selected'
} as const;
