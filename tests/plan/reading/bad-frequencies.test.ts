/** Fields of units, channels and conduits that a file may not hold: the place, what was found and what was expected are told. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { archived } from '../../archive/documents';
import { withValue } from './sound-document';

type Row = readonly [path: string, value: unknown, found: string, expected: string];

const calibration = (setting: number) => ({
  ...{ setting, circuit: 'One', frequency_Hz: 44_100 },
  ...{ inductance_H: 1e-4, capacitance_F: 1.47e-7, before_F: 1.5e-7 }
});

const rows: readonly Row[] = [
  ['circuits[0].channel.pinned', 'yes', '"yes" (text)', 'true or false'],
  ['circuits[0].channel.frequencySetting', 3, '3', 'at most 2, the settings of unit "U1"'],
  ['units[0].settings_F', [], 'a list of 0 entries', 'a list of 1 to 64 entries'],
  ['units[0].settings_F[1]', 0, '0', 'a number from 1e-11 to 0.0001'],
  ['units[0].calibrations[0].setting', 3, '3', 'at most 2, the settings of unit "U1"'],
  ['units[0].calibrations[0].setting', 0, '0', 'a whole number from 1 to 64'],
  ['units[0].calibrations[0].before_F', undefined, 'nothing', 'a number from 1e-11 to 0.0001'],
  ['units[0].calibrations[0].frequency_Hz', '44 kHz', '"44 kHz" (text)', 'a number from 1000 to 1000000'],
  ['units[1].statedInductance_H', 100, '100', 'a number from 1e-9 to 1'],
  ['units[1].inductanceRange_H', [7e-4, 5e-5], '0.0007 to 0.00005', 'the smaller inductance first'],
  ['units[1].scansInTurn', undefined, 'nothing', 'true or false'],
  ['units[1].measuringTime_s', 0, '0', 'a number from 0.00001 to 10'],
  ['conduits[0].circuits[1]', 'C9', '"C9" (text)', 'the id of a circuit in the file'],
  ['conduits[0].length', -1, '-1', 'a number from 0 to 10000'],
  ['conduits[0].mutualPerMetre_H', 1, '1', 'a number from 0 to 0.000001'],
  ['conduits[1].id', 'D1', '"D1" a second time (first at conduits[0])', 'an id of its own']
];

const documentOf = () => JSON.parse(archived('v1-frequencies')) as Record<string, unknown>;

const problemsWith = (path: string, value: unknown) => {
  const reading = readSite(JSON.stringify(withValue(documentOf(), path, value)));
  return reading.ok ? [] : reading.problems;
};

describe('a file with a wrong unit, channel or conduit is refused whole', () => {
  it.each(rows.map(([path, value, found, expected]) => ({ path, value, found, expected })))(
    '$path = $value',
    ({ path, value, found, expected }) => {
      expect(problemsWith(path, value)).toContainEqual(expect.objectContaining({ path, found, expected }));
    }
  );

  it('two calibrations of one setting', () => {
    const twice = [calibration(2), calibration(1), calibration(2)];
    expect(problemsWith('units[0].calibrations', twice)).toMatchObject([
      {
        path: 'units[0].calibrations[2].setting',
        found: 'setting 2 a second time (first at calibrations[0])',
        expected: 'one calibration for each setting'
      }
    ]);
  });

  it('a circuit twice in one conduit', () => {
    expect(problemsWith('conduits[0].circuits', ['C1', 'C2', 'C1'])).toMatchObject([
      {
        path: 'conduits[0].circuits[2]',
        found: '"C1" a second time (first at circuits[0])',
        expected: 'each circuit once'
      }
    ]);
  });
});
