/** Order of cuts and setting out. */
export const cutting = {
  'cutting.none': 'Nothing to cut yet: draw a loop.',
  'cutting.baseline': 'Cuts are measured from',
  'cutting.from':
    'Station: along {name} from its start, the 0 on the plan. Offset: square to it, positive to the left of its way.',
  'cutting.noBaseline':
    'There is no line to measure from: draw a lane, a kerb or a stop line, and stations and offsets follow.',
  'cutting.cuts': 'Cuts',
  'cutting.withHoles': { one: 'and {count} core hole', other: 'and {count} core holes' },
  'cutting.blade': 'Way of the blade',
  'cutting.ofDepth': '{depth} deep, {width} wide',
  'cutting.ofOvercuts': '{length} of it past the ends',
  'cutting.unplaced': 'In the sums, but nowhere on the plan, as only their length is given: {homeRuns}.',
  'cutting.unplacedOne': 'home run of {loop}, {length}',
  'cutting.unplacedMany': {
    one: '{count} home run, {length}',
    other: '{count} home runs, {length} together'
  },
  'cutting.caption': 'Cuts in the order of sawing',
  'cutting.cut': 'Cut',
  'cutting.loop': 'Loop',
  'cutting.sharedWith': 'with {loops}',
  'cutting.startStation': 'Start, station ({unit})',
  'cutting.startOffset': 'offset ({unit})',
  'cutting.endStation': 'End, station ({unit})',
  'cutting.endOffset': 'offset ({unit})',
  'cutting.length': 'Length',
  'cutting.overcut': 'Past start, end',
  'cutting.beyond': '{from}, {to}',
  'cutting.beyondBoth': '{length} both',
  'cutting.depth': 'Depth',
  'cutting.round': 'centre; radius {radius}',
  'cutting.kind.side': 'side',
  'cutting.kind.shared': 'shared side',
  'cutting.kind.corner': 'corner cut',
  'cutting.kind.round': 'round',
  'cutting.kind.homeRun': 'home run',
  'cutting.showAll': 'Show all {count} cuts',
  'cutting.holes': 'Core holes, drilled first',
  'cutting.hole': 'Hole',
  'cutting.holeNumber': 'Hole {number}',
  'cutting.reference': 'Reference point',
  'cutting.references':
    'Reference points: to find where the line begins, and to check that the drawing fits the site',
  'cutting.station': 'Station ({unit})',
  'cutting.offset': 'Offset ({unit})',
  'cutting.diameter': 'Across'
} as const;
