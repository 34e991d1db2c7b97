/** Key list, first steps, ideas. */
export const help = {
  'help.title': 'Help and keys',
  'help.intro':
    'Draw loops with the tools, drag them, and type exact sizes in the details. Every figure follows at once; a figure that is pressed tells how it was computed.',
  'help.fields':
    "A field takes any unit: 1.8 m, 180 cm, 6', 6'-6\", 78in. The arrow keys step it, with Shift ten times as far. Enter takes the entry, Escape drops it.",
  'help.keys': 'Keys',
  'help.none': 'no key',
  'help.model': 'What the figures leave out',
  'help.modelText':
    'A vehicle is a set of flat plates and closed rings of perfect conductor at effective heights. Iron, which raises the inductance a little at the wheels, and the gaps of a real underside are not modelled. Measure on site before you rely on a narrow margin.',
  'legend.title': 'Lines on the plan',
  'legend.sawCut': 'Loop: its saw cut; the arrow is the winding sense',
  'legend.sharedCut': 'Slot that two halves of a loop share',
  'legend.tail': 'Tail, twisted, from the loop to the pull box',
  'legend.leadIn': 'Lead-in cable, from the pull box to the cabinet',
  'legend.mat': 'Steel mat',
  'legend.plate': 'Steel plate',
  'help.version': 'Release {version}',

  'help.draw':
    'While a tool draws, a digit opens the size: Tab goes on to the next one, Enter takes them, Escape drops the gesture. Alt suspends snapping.',
  'help.undo':
    'Undo takes back one gesture or one field at a time, two hundred steps deep. It does not outlive a reload of the page: what you drew does.',
  'help.hand':
    'Two fingers move and zoom the plan, a finger that rests opens the menu. Once a pen was used it draws and a finger moves the view; the settings change that.',
  'help.search': 'Search the commands',
  'help.nothing': 'No command has this in its name or its keys.',
  'help.spaceDrag': 'Move the view with any tool: hold and drag',
  'help.space': 'Space',
  'help.middle': 'middle button',
  'help.wheel': 'Zoom at the pointer',
  'help.turn': 'wheel',
  'help.suspend': 'Suspend snapping: hold while drawing or moving',
  'help.group.file': 'Files and help',
  'help.group.edit': 'Editing',
  'help.group.move': 'Moving and arranging',
  'help.group.tools': 'Tools',
  'help.group.insert': 'Inserting without a pointer',
  'help.group.wiring': 'Wiring',
  'help.group.view': 'View and snapping',

  'ideas.title': 'Ideas',
  'ideas.open': 'Ideas to try',
  'ideas.intro':
    'A finished site for each use, and three things to try in it. It opens as a site of its own; the one that is open now stays under Open.',
  'ideas.start': 'Open this site',
  'ideas.more': 'More finished sites',
  'ideas.failed': 'The sample could not be loaded. Go online once and try again.',
  'ideas.designer': 'Design a stop line',
  'ideas.designer.1': 'Drag a loop towards the other lane and watch the findings.',
  'ideas.designer.2': 'Select a loop and type another number of turns: L, Q and the frequency follow.',
  'ideas.designer.3':
    'Under Frequencies choose “Plan frequencies” and see which settings keep the channels apart.',
  'ideas.estimator': 'Estimate a job',
  'ideas.estimator.1':
    'Under Quantities open a line: it says how it came about, and the plan shows where. The prices here are invented.',
  'ideas.estimator.2': 'Drag the cabinet: the lead-ins are drawn, so their lengths and the sums follow.',
  'ideas.estimator.3': 'Make a loop longer, or copy it, and compare.',
  'ideas.instructor': 'Show a class why',
  'ideas.instructor.1':
    'Drag the bicycle across the diagonal, then across the quadrupole, and compare the responses above the plan.',
  'ideas.instructor.2': 'Under Passing look across the lane, and lay the response map under the loops.',
  'ideas.instructor.3':
    'Select a loop, open its losses and its cross-section, and press a figure to see its formula.',
  'ideas.technician': 'Compare with the meter',
  'ideas.technician.1':
    'Open Field check and see what a meter should show at the cabinet, circuit by circuit.',
  'ideas.technician.2':
    'Under Causes choose “Left, rear”: the channel that never calls, and how far away its fault is.',
  'ideas.technician.3': 'Choose “Right, front”: what the rain did, and which reading would make sure.',
  'ideas.car-park-counting-pair': 'Counting pair of a car park: which way a car went',
  'ideas.driveway-gate': 'Driveway gate: a free exit and two protecting loops',
  'ideas.calls-that-miscount': 'Calls that miscount: what traffic does to outputs over time',
  'ideas.loading-bay-on-steel': 'Loading bay on steel: what a reinforced slab takes away',
  'ideas.two-ways-to-guard-a-gate': 'Two ways to guard a gate: kept designs side by side',
  'ideas.advance-loops': 'Advance loops: fast traffic and the decision zone'
} as const;
