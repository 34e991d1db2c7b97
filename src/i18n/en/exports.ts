/** Making files for others. */
export const exports = {
  // parts of file names: plain letters
  'exports.file.takeoff': 'take-off',
  'exports.file.readings': 'readings',
  'exports.file.measured': 'measured',
  'exports.file.record': 'commissioning-record',
  'exports.file.form': 'readings-to-take',
  'exports.file.cutting': 'cutting-plan',
  'exports.file.designs': 'designs-compared',
  'exports.file.report': 'report',
  'exports.file.plan': 'plan',
  'exports.file.sheet': 'sheet',

  'exports.title': 'Export',
  'exports.intro': 'Files for others, made in this browser from the site as it is drawn now.',
  'exports.noPictures': {
    one: 'The picture under the plan is in none of them; the saved site has it.',
    other: 'The {count} pictures under the plan are in none of them; the saved site has them.'
  },
  'exports.sheet': 'Sheet',
  'exports.sheetFor': 'To print and to take to the road: plan at a true scale, tables, wiring, cautions.',
  'exports.plan': 'Plan',
  'exports.planFor':
    'SVG and PNG to put into a document, DXF in real units with named layers for a drawing program.',
  'exports.takeoff': 'Take-off',
  'exports.takeoffFor': 'Amounts line by line, how each came about, what to buy, and what it costs.',
  'exports.readings': 'Readings and settings',
  'exports.readingsFor':
    'What a meter should read at loop and cabinet, within which limits, and how channels are set.',
  'exports.measured': 'Measured readings',
  'exports.measuredFor':
    'What meters said, with what was expected, the verdict, and the drift since commissioning.',
  'exports.record': 'Commissioning record',
  'exports.recordFor':
    'Circuit by circuit: expected, measured, verdict, settings, acceptance, and lines to sign on.',
  'exports.form': 'Empty form',
  'exports.formFor': 'To take to the road: boxes to write into, and beside each what should be read.',
  'exports.cutting': 'Cutting plan',
  'exports.cuttingFor': 'Cuts in their order, with station and offset of their ends, overcuts and depths.',
  'exports.designs': 'Designs compared',
  'exports.designsFor':
    'Every result that differs between the kept designs, better and worse marked, and what differs in the drawing.',
  'exports.oneDesign':
    'There is only one design: keep the present one under a name and change the drawing, and there are two to compare.',
  'exports.report': 'Report',
  'exports.reportFor': 'Everything that was computed, in SI units, as the command line prints it.',
  'exports.make': '{what} as {format}',
  'exports.resolution': 'Resolution of PNG',
  'exports.dotsPerInch': '{dots} dots per inch',
  'exports.forSpreadsheet': 'CSV for a spreadsheet',
  'exports.forSpreadsheetHint':
    'With a mark at the beginning by which spreadsheets know the letters. Always: commas, decimal point, units in the head.',

  'exports.take': 'Take away: {what}',
  'exports.takeSvg': 'Picture (SVG)',
  'exports.takePng': 'Picture (PNG)',
  'exports.takeCsv': 'Table (CSV)',

  'exports.waiting': '{file}: waiting for figures that are still on their way …',
  'exports.making': '{file}: being made …',
  'exports.progress': 'Progress of {file}',
  'exports.cancel': 'Cancel',
  'exports.made': '{name} is made and lies with the browser’s downloads.',
  'exports.ended': '{file}: cancelled, nothing was kept.',
  'exports.unfit': '{file} was not made. {message}',
  'exports.failed': '{file} could not be made: {reason}',
  'exports.changedMeanwhile': 'The drawing was changed meanwhile: ask once more.',
  'exports.noFigures': 'The figures of this drawing could not be computed.',
  'exports.tooLarge':
    'At {dots} dots to the inch the picture would be {width} × {height} pixels, more than browsers paint. The largest that fits has {most} dots to the inch, {mostWidth} × {mostHeight} pixels: choose fewer dots, or SVG, which has no limit.',
  'exports.noCanvas': 'The browser has no memory for a picture of this size; SVG needs none.'
} as const;
