/** Every way to spoil one field that anybody thought of: the place, what was found and what was expected must be told. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { soundDocument, withValue } from './sound-document';

/** Path of the field, the bad value, found, expected; the place that is blamed when it is another one. */
type Row = readonly [path: string, value: unknown, found: string, expected: string, blamed?: string];

const TURNS = 'a whole number from 1 to 50';
const SIDE = 'a number from 0.05 to 500';
const ID = 'a text of 1 to 80 printable characters';
const nothing = 'nothing';
const loopTwice = [[{ loop: 'L1', reversed: false }]];

const rows: readonly Row[] = [
  ['format', 'another-format', '"another-format" (text)', '"kerfline-site"'],
  ['format', undefined, nothing, '"kerfline-site"'],
  ['format', 7, '7', '"kerfline-site"'],
  ['version', undefined, nothing, 'the whole number 1'],
  ['version', '1', '"1" (text)', 'the whole number 1'],
  ['version', 0, '0', 'the whole number 1'],
  ['version', -1, '-1', 'the whole number 1'],
  ['version', 1.5, '1.5', 'the whole number 1'],
  ['version', 7, '7', 'the whole number 1'],
  ['version', null, 'null', 'the whole number 1'],
  ['name', 12, '12', 'a text of at most 200 characters'],
  ['name', 'x'.repeat(201), `"${'x'.repeat(60)}…" (text)`, 'a text of at most 200 characters'],
  ['displayUnits', 'furlongs', '"furlongs" (text)', 'one of "metric", "imperial"'],
  ['temperature_C', 400, '400', 'a number from -60 to 90'],
  ['pavement', 'asphalt', '"asphalt" (text)', 'an object'],
  ['pavement.relativePermittivity', 0, '0', 'a number from 1 to 100'],
  ['lanes', { a: 1 }, 'an object', 'a list of at most 200 entries'],
  ['lanes[0]', 'lane', '"lane" (text)', 'an object'],
  ['lanes[0].id', '', '"" (text)', ID],
  ['lanes[0].centreline', [[0, 0]], 'a list of 1 entry', 'a list of 2 to 400 entries'],
  ['lanes[0].centreline[1]', [1, 2, 3], 'a list of 3 entries', 'a list of 2 numbers'],
  [
    'lanes[0].centreline',
    [
      [1, 1],
      [1, 1]
    ],
    'a line without length',
    'points that lie apart'
  ],
  ['lanes[0].width', 0, '0', 'a number from 0.5 to 50'],
  ['lanes[0].largestVehicle', 'tram', '"tram" (text)', 'the id of a vehicle in the file or the catalogue'],
  ['lanes[1].id', 'lane1', '"lane1" a second time (first at lanes[0])', 'an id of its own'],
  [
    'marks[0].kind',
    'lamp',
    '"lamp" (text)',
    'one of "stop-line", "kerb", "gate", "cover", "joint", "note", "pull-box", "cabinet", "conduit", "island", "arrow", "dimension"'
  ],
  ['marks[0].points', [], 'a list of 0 entries', 'a list of 1 to 400 entries'],
  ['marks[1].text', 'x'.repeat(4001), `"${'x'.repeat(60)}…" (text)`, 'a text of at most 4000 characters'],
  ['marks[1].id', 'm1', '"m1" a second time (first at marks[0])', 'an id of its own'],
  ['loops', null, 'null', 'a list of at most 500 entries'],
  ['loops[0]', null, 'null', 'an object'],
  ['loops[0].id', 'a\u0007b', '"a b" (text)', ID],
  ['loops[0].id', 17, '17', ID],
  ['loops[0].turns', '3', '"3" (text)', TURNS],
  ['loops[0].turns', 2.5, '2.5', TURNS],
  ['loops[0].turns', 0, '0', TURNS],
  ['loops[0].turns', -3, '-3', TURNS],
  ['loops[0].turns', 51, '51', TURNS],
  ['loops[0].turns', null, 'null', TURNS],
  ['loops[0].turns', true, 'true', TURNS],
  ['loops[0].turns', undefined, nothing, TURNS],
  [
    'loops[0].wire',
    'awg13',
    '"awg13" (text)',
    'one of "awg12", "awg14", "awg16", "awg18", "mm2-1.5", "mm2-2.5"'
  ],
  ['loops[0].slot', undefined, nothing, 'an object'],
  ['loops[0].slot.depth', 50, '50', 'a number from 0.005 to 1'],
  ['loops[0].slot.width', 0, '0', 'a number from 0.001 to 0.1'],
  ['loops[0].slot.relativePermittivity', 1e6, '1000000', 'a number from 1 to 100'],
  ['loops[0].tail.length', -4, '-4', 'a number from 0 to 1000'],
  ['loops[0].shape', undefined, nothing, 'an object'],
  [
    'loops[0].shape.kind',
    'star',
    '"star" (text)',
    'one of "rectangle", "quadrupole", "diagonal", "circle", "polygon"'
  ],
  [
    'loops[0].shape.kind',
    undefined,
    nothing,
    'one of "rectangle", "quadrupole", "diagonal", "circle", "polygon"'
  ],
  ['loops[0].shape.width', 0, '0', SIDE],
  ['loops[0].shape.width', 1800, '1800', SIDE],
  ['loops[0].shape.length', '6 ft', '"6 ft" (text)', SIDE],
  ['loops[0].shape.centre', [0], 'a list of 1 entry', 'a list of 2 numbers'],
  ['loops[0].shape.centre[1]', 1e9, '1000000000', 'a number from -20000 to 20000'],
  ['loops[0].shape.rotation', 'north', '"north" (text)', 'a number from -3600 to 3600'],
  ['loops[0].shape.cornerCut', 0.9, '0.9 m', 'a cut from 0 to less than half the shorter side, here 0.9 m'],
  ['loops[0].shape.cornerCut', 30, '30 m', 'a cut from 0 to less than half the shorter side, here 0.9 m'],
  ['loops[3].shape.diameter', -1, '-1', SIDE],
  [
    'loops[4].shape.points',
    [
      [0, 0],
      [1, 1]
    ],
    'a list of 2 entries',
    'a list of 3 to 400 entries'
  ],
  [
    'loops[4].shape.points',
    [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2]
    ],
    'side 1 crossing or touching side 3',
    'an outline that neither crosses nor touches itself'
  ],
  [
    'loops[4].shape.points',
    [
      [0, 0],
      [2, 0],
      [2, 0],
      [0, 2]
    ],
    'the point (2, 0) twice in a row',
    'every point apart from the one before it'
  ],
  ['loops[1].id', 'L1', '"L1" a second time (first at loops[0])', 'an id of its own'],
  ['cables[0].resistancePerMetre_ohm', 0, '0', 'a number from 0.000001 to 10'],
  ['cables[0].inductancePerMetre_H', -7e-7, '-7e-7', 'a number from 1e-9 to 0.0001'],
  ['circuits[0].strings', [], 'a list of 0 entries', 'a list of 1 to 64 entries'],
  ['circuits[0].strings[0]', [], 'a list of 0 entries', 'a list of 1 to 64 entries'],
  ['circuits[0].strings[0][0].loop', 'L9', '"L9" (text)', 'the id of a loop in the file'],
  [
    'circuits[0].strings[0][1].loop',
    'L1',
    '"L1", already wired in circuit "C1"',
    'a loop that is wired only once'
  ],
  [
    'circuits[1].strings',
    loopTwice,
    '"L1", already wired in circuit "C1"',
    'a loop that is wired only once',
    'circuits[1].strings[0][0].loop'
  ],
  ['circuits[0].strings[0][0].reversed', 'no', '"no" (text)', 'true or false'],
  [
    'circuits[0].leadIn.cable',
    'pair-13',
    '"pair-13" (text)',
    'the id of a cable in the file or the catalogue'
  ],
  ['circuits[0].leadIn.length', -1, '-1', 'a number from 0 to 10000'],
  ['circuits[0].channel.unit', 'U7', '"U7" (text)', 'the id of a unit in the file'],
  ['circuits[0].channel.number', 3, '3', 'at most 2, the channels of unit "U1"'],
  ['circuits[0].channel.frequencySetting', 5, '5', 'at most 4, the settings of unit "U1"'],
  ['circuits[0].channel.frequency_Hz', '50 kHz', '"50 kHz" (text)', 'a number from 1000 to 1000000 or null'],
  ['circuits[0].channel.tripThreshold', 3.2, '3.2', 'a number from 0.000001 to 0.5'],
  ['circuits[0].channel.releaseRatio', 0, '0', 'a number from 0.01 to 1'],
  ['circuits[0].channel.output.mode', 'lamp', '"lamp" (text)', 'one of "presence", "pulse"'],
  ['circuits[0].channel.output.delay_s', -2, '-2', 'a number from 0 to 86400'],
  ['circuits[0].channel', 'U1', '"U1" (text)', 'an object or null'],
  ['circuits[0].detect[0]', 'tram', '"tram" (text)', 'the id of a vehicle in the file or the catalogue'],
  ['circuits[1].id', 'C1', '"C1" a second time (first at circuits[0])', 'an id of its own'],
  ['units[0].channels', 0, '0', 'a whole number from 1 to 64'],
  ['units[0].scansInTurn', 1, '1', 'true or false'],
  ['units[0].measuringTime_s', 5e9, '5000000000', 'a number from 0.00001 to 10'],
  ['units[0].settings_F', [], 'a list of 0 entries', 'a list of 1 to 64 entries'],
  ['units[0].settings_F[1]', 220, '220', 'a number from 1e-11 to 0.0001'],
  ['units[0].inductanceRange_H', [2e-3, 2e-5], '0.002 to 0.00002', 'the smaller inductance first'],
  ['vehicles[0].parts', [], 'a list of 0 entries', 'a list of 1 to 24 entries'],
  ['vehicles[0].parts[0].kind', 'sphere', '"sphere" (text)', 'one of "plate", "ring"'],
  ['vehicles[0].parts[0].height', 0, '0', 'a number from 0.02 to 10'],
  ['vehicles[0].parts[1].conductorRadius', 0.15, '0.15', "less than the ring's radius, 0.1"],
  ['vehicles[0].parts[1].axis', [0, 0, 0], 'an axis without length', 'a direction'],
  ['vehicles[0].parts[1].axis', [1, 0], 'a list of 2 entries', 'a list of 3 numbers'],
  ['probes[0].vehicle', 'tram', '"tram" (text)', 'the id of a vehicle in the file or the catalogue'],
  ['probes[0].at', 'here', '"here" (text)', 'a list of 2 numbers'],
  ['steel[0].kind', 'rail', '"rail" (text)', 'one of "mat", "plate"'],
  [
    'steel[0].outline',
    [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2]
    ],
    'side 1 crossing or touching side 3',
    'an outline that neither crosses nor touches itself'
  ],
  ['readings[0].circuit', 'C9', '"C9" (text)', 'the id of a circuit in the file'],
  ['readings[0].testPoint', 'kitchen', '"kitchen" (text)', 'one of "loop", "pull-box", "cabinet", "unit"'],
  ['tolerances.depth_m', -1, '-1', 'a number from 0 to 0.5'],
  ['notes', [], 'a list of 0 entries', 'a text of at most 4000 characters']
];

describe('a file with one bad field', () => {
  it('was sound before', () => {
    expect(readSite(JSON.stringify(soundDocument())).ok).toBe(true);
  });

  it.each(
    rows.map(([path, value, found, expected, blamed = path]) => ({ path, value, found, expected, blamed }))
  )('$path = $value', ({ path, value, found, expected, blamed }) => {
    const document = withValue(soundDocument(), path, value);
    if (path.endsWith('conductorRadius')) withValue(document, 'vehicles[0].parts[1].radius', 0.1);
    const reading = readSite(JSON.stringify(document));
    expect(reading.ok).toBe(false);
    const problem = reading.ok ? undefined : reading.problems.find((each) => each.path === blamed);
    expect(problem).toMatchObject({ path: blamed, found, expected });
    expect(problem?.message.startsWith(`${blamed}: `)).toBe(true);
    expect(problem?.message).toContain(found);
  });
});

describe('a file with several faults', () => {
  it('hears about all of them at once, wrong fields and dangling references alike', () => {
    const document = soundDocument();
    withValue(document, 'loops[0].turns', '3');
    withValue(document, 'loops[3].wire', 'string');
    withValue(document, 'circuits[2].leadIn.cable', 'rope');
    withValue(document, 'units[0].channels', -1);
    const reading = readSite(JSON.stringify(document));
    expect(reading.ok ? [] : reading.problems.map(({ path }) => path)).toEqual([
      'loops[0].turns',
      'units[0].channels',
      'loops[3].wire',
      'circuits[2].leadIn.cable'
    ]);
  });

  it('does not call a reference dangling because what it names is itself faulty', () => {
    const document = withValue(soundDocument(), 'loops[0].slot.depth', 'deep');
    const reading = readSite(JSON.stringify(document));
    expect(reading.ok ? [] : reading.problems.map(({ path }) => path)).toEqual(['loops[0].slot.depth']);
  });

  it('hears about the first fifty and how many more there are', () => {
    const marks = Array.from({ length: 63 }, (_, index) => ({
      id: `m${index}`,
      kind: 'lamp',
      points: [[0, 0]]
    }));
    const reading = readSite(JSON.stringify({ ...soundDocument(), marks }));
    const problems = reading.ok ? [] : reading.problems;
    expect(problems).toHaveLength(51);
    expect(problems.at(-1)).toMatchObject({ found: '63 problems', message: 'and 13 more.' });
  });

  it('shows text of the file shortened and without control characters', () => {
    const nasty = `\u001b[31m\u202e${'a'.repeat(5_000)}`;
    const reading = readSite(JSON.stringify(withValue(soundDocument(), 'loops[0].wire', nasty)));
    const message = reading.ok ? '' : reading.problems.map((problem) => problem.message).join('');
    expect(message).not.toMatch(/\p{C}/u);
    expect(message.length).toBeLessThan(400);
  });
});
