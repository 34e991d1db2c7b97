/** The printed sheet: its frame, its parts, and the sentence for a scale that does not fit. */
export const sheet = {
  'sheet.site': 'Site',
  'sheet.client': 'Client',
  'sheet.scale': 'Scale',
  'sheet.noScale': 'as noted',
  'sheet.scaleOn': '1:{scale} on {paper}',
  'sheet.units': 'Units',
  'sheet.units.metric': 'metres, millimetres',
  'sheet.units.imperial': 'feet and inches; tables in decimal feet',
  'sheet.content': 'Content',
  'sheet.drawnBy': 'Drawn by',
  'sheet.checkedBy': 'Checked by',
  'sheet.date': 'Date',
  'sheet.number': 'Sheet no.',
  'sheet.revision': 'Revision',
  'sheet.page': 'Page',
  'sheet.pageOf': '{number} of {count}',
  'sheet.actualSize': 'Print at actual size (100 %), not fitted to the page: this bar is then 100 mm long.',
  'sheet.northSign': 'N',
  'sheet.continued': '{title} (continued)',

  'sheet.paper.A4': 'A4',
  'sheet.paper.A3': 'A3',
  'sheet.paper.letter': 'letter',
  'sheet.paper.tabloid': 'tabloid',
  'sheet.portrait': '{paper} portrait',
  'sheet.landscape': '{paper} landscape',

  'sheet.unfit.both':
    'At 1:{scale} the plan does not fit on {paper}: it needs {larger}, or 1:{smaller} on this paper.',
  'sheet.unfit.paper': 'At 1:{scale} the plan does not fit on {paper}: it needs {larger}.',
  'sheet.unfit.scale': 'At 1:{scale} the plan does not fit on any of the papers: it needs 1:{smaller}.',
  'sheet.unfit.together':
    'At 1:{scale} the plan does not fit on any of the papers: it fits on {larger} at 1:{smaller}.',
  'sheet.unfit.neither':
    'The plan, {width} wide and {height} high, does not fit on {paper} at any scale down to 1:{scale}. Leave the plan out, or draw what lies far apart as sites of their own.',
  'sheet.unfit.neitherHere':
    'The plan, {width} wide and {height} high, does not fit on {paper} at any scale down to 1:{scale}: it needs {larger}.',
  'sheet.nothing': 'Nothing is drawn yet.',

  'sheet.size': '{width} × {length}',
  'sheet.diameter': '⌀ {diameter}',
  'sheet.plan': 'Plan',
  'sheet.markName': '{kind} {number}',
  'sheet.baseline': 'Baseline: {name}',
  'sheet.start': '0',

  'sheet.wiring': 'Wiring',
  'sheet.terminals': '{unit}, channel {number}',
  'sheet.string': 'String {number}: {loops}',
  'sheet.reversedLoop': '{name} (reversed)',

  'sheet.designs.leftOut': 'Designs that are not on this page',
  'sheet.designs.later':
    'The designs were still being computed when this was printed. Open the sheet’s preview, wait for it, and print once more.',

  'sheet.record': 'Read at the cabinet',
  'sheet.record.insulation': 'Insulation (MΩ)',
  'sheet.record.temperature': 'Weather, temperature',
  'sheet.record.by': 'Date, initials',
  'sheet.quantities': 'Quantities',
  'sheet.rangeNote':
    'In brackets: where a reading plausibly lies, nineteen times in twenty, if every tolerance is as stated.',
  'sheet.range': '{value} ({from}–{to})',

  'sheet.section': 'Slot in section',
  'sheet.sectionScale':
    'Wire {wires} thick with its insulation. Before sealing: slot clean and dry, wires at the bottom.',
  'sheet.scaleOf': 'Scale {scale}',

  'sheet.cutting': 'Cuts by loop',
  'sheet.cuttingHint':
    'Numbers are the order of sawing; the table of cuts has the places of their ends. Arrows lead from start to end.',
  'sheet.notPlaced': 'Also to be sawn, and what to mind',
  'sheet.homeRun':
    'Home run of {name}: {length}, {depth} deep. Only its length is stated, and the plan shows no more than where it leads; agree its way on the site.',

  'sheet.remarks': 'Remarks',
  'sheet.cautions': 'Cautions',
  'sheet.caution.codes':
    'Local codes, the road authority’s rules and the judgement of a licensed practitioner decide; where they differ from this sheet, they hold.',
  'sheet.caution.safety':
    'A loop tells that a vehicle is there. It is never the sole safety device: moving gates, barriers and doors need protection of their own, for people above all.',
  'sheet.caution.services':
    'Before sawing, find out what lies in the pavement: services, reinforcement, post-tensioning, heating. Saw no deeper than stated.',
  'sheet.caution.traffic':
    'Work on the road only behind the traffic control that is approved for it, and in high-visibility clothing.',
  'sheet.caution.dust':
    'Sawing: protect eyes, ears, hands and lungs; cut wet or with extraction, and keep the slurry out of drains.',
  'sheet.caution.mains':
    'Cabinet: work on mains only by those who are licensed for it, with the supply isolated, locked off and checked.',
  'sheet.caution.test':
    'Insulation test: take the loop off the unit first, let nobody touch the wires, and discharge them afterwards.',
  'sheet.caution.measure':
    'All lengths are those of the drawing. Measure on the site before cutting; where the site differs, change the drawing first.'
} as const;
