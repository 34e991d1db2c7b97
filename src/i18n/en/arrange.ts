/** Arranging, layers, locks, the context menu, the command palette, several things at once. */
export const arrange = {
  'command.select-lane-loops': 'Select all loops of this lane',
  'command.lock': 'Lock or unlock',
  'command.unlock-all': 'Unlock all but pictures',
  'command.hide': 'Hide',
  'command.show-all': 'Show all that is hidden',
  'command.align-left': 'Align left edges',
  'command.align-centre': 'Align centres on a vertical line',
  'command.align-right': 'Align right edges',
  'command.align-top': 'Align top edges',
  'command.align-middle': 'Align middles on a level line',
  'command.align-bottom': 'Align bottom edges',
  'command.distribute-x': 'Equal gaps from left to right',
  'command.distribute-y': 'Equal gaps from bottom to top',
  'command.distribute-lane': 'Equal gaps along the lane',
  'command.set-gap': 'Set the gap exactly …',
  'command.repeat-along-lane': 'Repeat along a lane …',
  'command.mirror-x': 'Mirror left and right',
  'command.mirror-y': 'Mirror top and bottom',
  'command.centre-in-lane': 'Centre in the lane',
  'command.mirror-lane': 'Mirror across the middle of the lane',

  'notice.lockedKept': {
    one: 'One thing is locked and stayed as it is.',
    other: '{count} things are locked and stayed as they are.'
  },
  'notice.locked': 'Locked, so nothing was changed. Ctrl+L or the details unlock it.',
  'notice.hidden': {
    one: 'Hidden, and still counted in every figure. Shift+V shows it again.',
    other: '{count} things are hidden, and still counted in every figure. Shift+V shows them again.'
  },
  'notice.layerHidden': 'The layer {layer} is hidden. What lies on it still counts in every figure.',
  'notice.copied': 'Copied: {things}',
  'notice.copiedHere': 'Copied for this window only: the browser does not let the page use the clipboard.',
  'notice.pasteForeign': 'What is in the clipboard is not part of a plan; nothing was pasted.',
  'notice.pasteEmpty': 'There is nothing to paste: copy something on a plan first.',
  'notice.pasteRefused': 'Nothing was pasted. {problem}',
  'notice.pasteFull': 'Nothing was pasted: the site has no room for all of it.',
  'notice.notAll': {
    one: 'One of {all} could not take it.',
    other: '{count} of {all} could not take it.'
  },
  'notice.repeated': {
    one: 'One copy was made of {wanted}: there is no room for more.',
    other: '{count} copies were made of {wanted}: there is no room for more.'
  },
  'notice.noMirror': 'A picture cannot be mirrored and stayed as it is.',
  'notice.sampleFailed': 'The sample could not be loaded. Go online once and try again.',
  'notice.dismiss': 'Dismiss',
  'paste.otherVersion': 'things copied by another version of the program',
  'paste.thisVersion': 'things copied by this one',

  'handling.locked': 'Locked: it neither moves nor changes.',
  'handling.someLocked': {
    one: 'One of these is locked: it neither moves nor changes.',
    other: '{count} of these are locked: they neither move nor change.'
  },
  'handling.layerLocked': 'The layer {layer} is locked: what lies on it neither moves nor changes.',
  'handling.unlock': 'Unlock',
  'handling.unlockLayer': 'Unlock the layer',
  'handling.hidden': 'Hidden, and still counted in every figure.',
  'handling.show': 'Show',
  'handling.showLayer': 'Show the layer',
  'handling.lock': 'Lock',
  'handling.hide': 'Hide',
  'handling.group': 'Lock and hide',
  'outline.group.road': 'Lanes and loops',
  'outline.group.mark': 'Marks',
  'outline.group.steel': 'Steel',
  'outline.group.path': 'Paths',
  'outline.group.probe': 'Vehicles',
  'outline.group.underlay': 'Pictures',
  'outline.layer': 'The layer {layer}: {how}',
  'outline.locked': 'locked',
  'outline.hidden': 'hidden',
  'announce.selected': 'Selected: {things}',
  'announce.nothing': 'Nothing selected',
  'lane.selectLoops': 'Select its loops',
  'layers.title': 'Layers',
  'menu.title': 'What can be done',
  'palette.title': 'All commands'
} as const;
