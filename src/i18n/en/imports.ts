/** Lines and loops from other files. */
export const imports = {
  'imports.title': 'Import lines or loops',
  'imports.intro':
    'Lines of a drawing (DXF) are laid under the plan; a table (CSV) becomes loops. Nothing changes before you have seen it.',
  'imports.choose': 'Choose a file …',
  'imports.another': 'Another file …',
  'imports.orDrop': 'You can also drop a .dxf or .csv file on the plan.',
  'imports.template': 'Table of loops',
  'imports.templateIntro':
    'One row a loop. Heads in English or German, each with its unit or with units typed in the cells; whatever is left empty is as usual.',
  'imports.downloadTemplate': 'Download an example',
  'imports.downloadLoops': 'Download this site’s loops',
  'imports.file.template': 'loops-example',
  'imports.file.loops': 'loops',
  'imports.readOnly': 'This site is open to be read only; nothing can be brought in.',
  'imports.reading': 'Reading {name} …',
  'imports.progress': 'Progress of reading',
  'imports.cancel': 'Cancel',
  'imports.refused': '{name} cannot be used: {reason}',
  'imports.preview': 'What will come in',

  'imports.why.binary':
    'it is a binary DXF file. Save it as a DXF file in text form (ASCII) and bring in that.',
  'imports.why.sealed':
    'it is a DWG file, which only its own program reads. Save it there as DXF (ASCII) and bring in that.',
  'imports.why.none': 'it is no DXF file.',
  'imports.why.damaged': 'it is no DXF file, or a damaged one.',
  'imports.why.cut': 'it ends before its end mark; a part of it is missing.',
  'imports.why.empty': 'there is no line in it that could be shown.',
  'imports.why.tooMuch':
    'there is too much in it. At most 50 MB, 200,000 lines and a million points are read, blocks within blocks counted as often as they are set.',
  'imports.why.unreadable': 'the browser cannot read the file ({detail}).',

  'imports.unit': 'Unit of the drawing',
  'imports.unit.m': 'metres',
  'imports.unit.cm': 'centimetres',
  'imports.unit.mm': 'millimetres',
  'imports.unit.ft': 'feet',
  'imports.unit.in': 'inches',
  'imports.unit.file': 'as the file says',
  'imports.unitSize': '{unit}: {width} × {height}',
  'imports.unitSaid': 'The file says: {unit}.',
  'imports.unitOther': 'The file says: a unit of {length}.',
  'imports.unitUnsaid': 'The file does not say its unit. Choose the one whose size is right.',
  'imports.unitChoose': 'choose …',
  'imports.odd': 'That is {size} along the longer side. Is the unit right?',
  'imports.place': 'Place',
  'imports.place.file': 'where its coordinates say',
  'imports.place.view': 'in the middle of what is in sight',
  'imports.far':
    'Its coordinates lie {distance} from this plan, as on a national grid; it is moved here, and its own lengths stay as they are.',
  'imports.layers': 'Layers',
  'imports.layer': 'Layer',
  'imports.layerHidden': '{name} (switched off in the drawing)',
  'imports.paths': 'Lines',
  'imports.points': 'at least three points, such as 0 0 | 2 0 | 1 2',
  'imports.pointCount': 'Points',
  'imports.all': 'All layers',
  'imports.chosen': { one: '{count} line', other: '{count} lines' },
  'imports.chosenSize': '{lines}, {width} × {height}',
  'imports.tooMany':
    '{paths} lines with {points} points are chosen; a plan takes {mostPaths} lines and {mostPoints} points of a drawing. Leave layers out.',
  'imports.tooLarge': 'In this unit it would be {size} long, more than a plan can hold.',
  'imports.tooSmall': 'In this unit it would be only {size} long.',
  'imports.noLayer': 'Choose at least one layer.',
  'imports.leftOut': 'Left out: {list}.',
  'imports.left.text': { one: '{count} text', other: '{count} texts' },
  'imports.left.fill': { one: '{count} filled area', other: '{count} filled areas' },
  'imports.left.dimension': { one: '{count} dimension', other: '{count} dimensions' },
  'imports.left.surface': { one: '{count} body or surface', other: '{count} bodies and surfaces' },
  'imports.left.point': { one: '{count} single point', other: '{count} single points' },
  'imports.left.picture': { one: '{count} picture', other: '{count} pictures' },
  'imports.left.sheet': { one: '{count} thing on a sheet', other: '{count} things on sheets' },
  'imports.left.tilted': { one: '{count} thing in a tilted plane', other: '{count} things in tilted planes' },
  'imports.left.damaged': { one: '{count} thing without sense', other: '{count} things without sense' },
  'imports.left.other': { one: '{count} other thing', other: '{count} other things' },
  'imports.lay': 'Lay under the plan',
  'imports.laid': '{name} lies under the plan: {lines}, locked.',
  'imports.full': 'at most {most} loops in a site',
  'imports.underlaysFull': 'The site has {count} pictures and drawings, and that is as many as it can hold.',
  'imports.step.lines': 'Lay lines under the plan',
  'imports.linesPreview': {
    one: '{count} line, {width} by {height}',
    other: '{count} lines, {width} by {height}'
  },

  'imports.why.noHeads':
    'no column has a name that is known. The first line must name them: id, shape, x, y, width, length, diameter, turns …',
  'imports.why.noRows': 'there is no row beneath the heads.',
  'imports.why.twice': 'more than one column is meant by “{detail}”.',
  'imports.why.tooLarge': 'at most 5 MB are read of a table.',
  'imports.unitless': 'Numbers without a unit are {unit}, those of slots {small}.',
  'imports.unknown': {
    one: 'A column is not known and left out: {list}.',
    other: '{count} columns are not known and left out: {list}.'
  },
  'imports.beyond': 'Only the first rows are looked at; {count} more are left out.',
  'imports.rows': 'Rows of the file',
  'imports.line': 'Line',
  'imports.loop': 'Loop',
  'imports.shape': 'Shape and size',
  'imports.position': 'Position',
  'imports.turns': 'Turns',
  'imports.state': 'What happens',
  'imports.comesIn': 'comes in',
  'imports.renamed': 'comes in as {id}: {taken} is taken',
  'imports.wrong': '{column}: found {found}, expected {expected}',
  'imports.summary': '{sound} of {rows} rows can come in.',
  'imports.someWrong': {
    one: '{count} row cannot, and says why.',
    other: '{count} rows cannot, and say why.'
  },
  'imports.onlyWrong': 'Show only rows that cannot come in',
  'imports.more': { one: '{count} more row', other: '{count} more rows' },
  'imports.wired': 'Give each loop a circuit and a channel of its own',
  'imports.bring': { one: 'Bring in {count} loop', other: 'Bring in {count} loops' },
  'imports.brought': { one: '{count} loop is on the plan.', other: '{count} loops are on the plan.' },
  'imports.step.loops': { one: 'Import {count} loop', other: 'Import {count} loops' },
  'imports.loopsPreview': {
    one: '{count} loop from the file among those that are there',
    other: '{count} loops from the file among those that are there'
  },

  'imports.closedQuote':
    'a quotation mark that is closed at the end of its cell; until it is, nothing beneath this line can be read',
  'imports.lastCell': {
    one: 'no further cell: the first line names {count} column (a number with a decimal comma goes in quotation marks, or semicolons between the cells)',
    other:
      'no further cell: the first line names {count} columns (a number with a decimal comma goes in quotation marks, or semicolons between the cells)'
  },
  'imports.nothing': 'nothing',
  'imports.aLength': 'a length, such as 1.8 m or 6 ft',
  'imports.aCount': 'a whole number',
  'imports.anAngle': 'an angle, such as 30°',
  'imports.aNumber': 'a number',
  'imports.because': '{expected} ({reason})',
  'imports.between': 'between {least} and {most}',
  'imports.shortName': 'at most {most} characters',
  'imports.plainId': 'at most 80 plain characters'
} as const;
