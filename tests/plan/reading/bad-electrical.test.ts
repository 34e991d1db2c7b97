/** Fields of the electrical model that a file may not hold: the place, what was found and what was expected are told. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { archived } from '../../archive/documents';
import { withValue } from './sound-document';

type Row = readonly [path: string, value: unknown, found: string, expected: string, blamed?: string];

const MARK = 'the id of a mark in the file';
const CABLE = 'the id of a cable in the file or the catalogue';
const last = (JSON.parse(archived('v1-electrical')) as { cables: unknown[] }).cables.length - 1;

const rows: readonly Row[] = [
  ['temperatureRange_C', [20], 'a list of 1 entry', 'a list of 2 numbers'],
  ['pavement.conductivity_S_m', -1, '-1', 'a number from 0 to 10'],
  ['acceptedSteelCost', 10, '10', 'a number from 0.001 to 0.9'],
  ['tolerances.depth_m', '1 cm', '"1 cm" (text)', 'a number from 0 to 0.5'],
  ['wires[0].insulatedDiameter', 0.0014, '0.0014', "more than the conductor's diameter, 0.0015"],
  ['wires[0].conductorDiameter', undefined, 'nothing', 'a number from 0.0001 to 0.1'],
  [
    'loops[0].wire',
    'w9',
    '"w9" (text)',
    'one of "w1", "awg12", "awg14", "awg16", "awg18", "mm2-1.5", "mm2-2.5"'
  ],
  ['loops[0].addedResistance_ohm', -0.1, '-0.1', 'a number from 0 to 1000'],
  ['loops[0].tail.route.to', 'box', '"box" (text)', MARK],
  ['circuits[0].leadIn.route.from', 'box', '"box" (text)', MARK],
  ['circuits[0].leadIn.route.to', 'hut', '"hut" (text)', MARK],
  ['circuits[0].leadIn.further[0].cable', 'rope', '"rope" (text)', CABLE],
  ['circuits[0].leadIn.further', 'more', '"more" (text)', 'a list of at most 8 entries'],
  [`cables[${last}].spacing`, 0.001, '0.001', "more than the conductor's diameter, 0.0014"],
  [
    `cables[${last}].spacing`,
    undefined,
    'nothing',
    'a number, or conductorDiameter and spacing to compute it from',
    `cables[${last}].resistancePerMetre_ohm`
  ],
  ['steel[0].relativePermeability', 0, '0', 'a number from 1 to 100000'],
  ['steel[1].resistivity_ohm_m', 'rust', '"rust" (text)', 'a number from 1e-9 to 0.001']
];

const documentOf = (): Record<string, unknown> =>
  JSON.parse(archived('v1-electrical')) as Record<string, unknown>;

describe('a file with a wrong electrical field is refused whole', () => {
  it.each(
    rows.map(([path, value, found, expected, blamed = path]) => ({ path, value, found, expected, blamed }))
  )('$path = $value', ({ path, value, found, expected, blamed }) => {
    const document = withValue(documentOf(), path, value);
    const reading = readSite(JSON.stringify(document));
    expect(reading.ok).toBe(false);
    expect(reading.ok ? [] : reading.problems).toContainEqual(
      expect.objectContaining({ path: blamed, found, expected })
    );
  });
});
