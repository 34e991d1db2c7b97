import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { unwatched } from '#exchange/job';
import { csvOf } from '#exchange/tables/csv';
import { cabinetReadings, loopReadings, vehicleReadings } from '#exchange/tables/readings';
import { loopsTable } from '#exchange/tables/loops';
import { settingsTable } from '#exchange/tables/settings';
import type { Cell, Table } from '#exchange/tables/table';
import { demoSite } from '#plan/demo';

const site = demoSite();
const assessment = createAssessor().assess(site, 'complete');
const source = { site, assessment };

const headsOf = ({ columns }: Table) => columns.map(({ head }) => head);
const at = (table: Table, row: number, head: string): Cell => {
  expect(headsOf(table)).toContain(head);
  return table.rows[row]![headsOf(table).indexOf(head)]!;
};

describe('expected at the cabinet', () => {
  const table = cabinetReadings(source);

  test.each(site.circuits.map(({ id }, row) => [id, row] as const))(
    'of %s lies within its range',
    (id, row) => {
      const readout = assessment.circuits.find((each) => each.id === id)!;
      expect(at(table, row, 'L (µH)')).toBeCloseTo(readout.inductance_H * 1e6, 6);
      expect(at(table, row, 'R dc (Ω)')).toBeCloseTo(readout.resistanceDc_ohm, 9);
      expect(at(table, row, 'f (kHz)')).toBeCloseTo(readout.frequency_Hz / 1000, 9);
      expect(at(table, row, 'Q')).toBeCloseTo(readout.q, 9);
      for (const [what, unit] of [
        ['R dc', ' (Ω)'],
        ['L', ' (µH)'],
        ['Q', ''],
        ['f', ' (kHz)']
      ] as const) {
        // prettier-ignore
        const value = at(table, row, `${what}${unit}`) as number;
        expect(at(table, row, `${what}, from${unit}`)).toBeLessThan(value);
        expect(at(table, row, `${what}, to${unit}`)).toBeGreaterThan(value);
      }
    }
  );

  test('says under which conditions', () => {
    expect(table.notes!.join(' ')).toContain('Wire at 20 °C');
    // a meter measures elsewhere, where capacitance adds more or less
    expect(table.notes!.join(' ')).toContain('L and Q at the frequency of the row');
  });
});

test('expected at the loop: without tail and lead-in it is less than at the cabinet', () => {
  const table = loopReadings(source);
  expect(table.rows).toHaveLength(site.loops.length);
  const inCircuit = assessment.circuits[0]!;
  const [first] = site.circuits[0]!.strings[0]!;
  const row = site.loops.findIndex(({ id }) => id === first!.loop);
  expect(at(table, row, 'L (µH)')).toBeLessThan(inCircuit.inductance_H * 1e6);
  expect(at(table, row, 'R dc (Ω)')).toBeLessThan(inCircuit.resistanceDc_ohm);
  expect(at(table, row, 'L, from (µH)')).toBeLessThan(at(table, row, 'L (µH)') as number);
});

test('expected with vehicles: the drop is positive, and its margin the drop over the threshold', () => {
  const table = vehicleReadings(source, { onlyWanted: true });
  expect(table.rows.length).toBe(site.circuits.reduce((sum, { detect }) => sum + detect.length, 0));
  table.rows.forEach((_, row) => {
    const drop = at(table, row, 'ΔL/L, drop (%)') as number;
    const threshold = at(table, row, 'Trip threshold (%)') as number;
    expect(drop).toBeGreaterThan(0);
    expect(at(table, row, 'ΔL/L, drop, from (%)')).toBeLessThan(drop);
    expect(at(table, row, 'ΔL/L, drop, to (%)')).toBeGreaterThan(drop);
    expect(at(table, row, 'Times the threshold')).toBeCloseTo(drop / threshold, 6);
  });
});

// somebody turns a knob by it: 0.25 s is not 0.3 s, and 62.5 % not 63 %
test('settings are written as they were stated, in as many places as that takes', async () => {
  const [first] = site.circuits;
  const channel = { ...first!.channel!, tripThreshold: 0.000125, releaseRatio: 0.625, output: { ...first!.channel!.output, mode: 'presence' as const, delay_s: 0.25, extension_s: 1.125 } }; // prettier-ignore
  const changed = { ...site, circuits: [{ ...first!, channel }] };
  const written = await csvOf([settingsTable({ site: changed, assessment })], {}, unwatched());
  const [head, row] = Papa.parse<string[]>(written).data;
  const of = (name: string) => row![head!.indexOf(name)];
  expect([of('Trip threshold (%)'), of('Delay (s)'), of('Extension (s)')]).toEqual([
    '0.0125',
    '0.25',
    '1.125'
  ]);
  expect(row).toContain('62.5');
});

test('settings follow units and channels, with what the drawing says', () => {
  const table = settingsTable(source);
  expect(table.rows).toHaveLength(site.circuits.filter(({ channel }) => channel).length);
  const places = table.rows.map((_, row) => `${String(at(table, row, 'Unit'))} ${String(at(table, row, 'Channel'))}`); // prettier-ignore
  expect(new Set(places).size).toBe(places.length);
  table.rows.forEach((_, row) => {
    const circuit = site.circuits.find(({ name }) => name === at(table, row, 'Circuit'))!;
    const unit = site.units.find(({ id }) => id === circuit.channel!.unit)!;
    expect(at(table, row, 'Frequency setting')).toBe(circuit.channel!.frequencySetting);
    const farads = unit.settings_F[circuit.channel!.frequencySetting - 1]!;
    expect(at(table, row, 'C of the setting (nF)')).toBeCloseTo(farads * 1e9, 6);
    expect(at(table, row, 'Trip threshold (%)')).toBeCloseTo(circuit.channel!.tripThreshold * 100, 9);
  });
});

test('loops have their sizes in the units shown', () => {
  const imperial = { site: { ...site, displayUnits: 'imperial' as const }, assessment };
  site.loops.forEach((loop, row) => {
    if (loop.shape.kind === 'circle' || loop.shape.kind === 'polygon') return;
    expect(at(loopsTable(source), row, 'Width (m)')).toBeCloseTo(loop.shape.width, 9);
    expect(at(loopsTable(imperial), row, 'Width (ft)')).toBeCloseTo(loop.shape.width / 0.3048, 9);
    expect(at(loopsTable(source), row, 'Slot depth (mm)')).toBeCloseTo(loop.slot.depth * 1000, 9);
    expect(at(loopsTable(imperial), row, 'Slot depth (in)')).toBeCloseTo(loop.slot.depth / 0.0254, 9);
    expect(at(loopsTable(source), row, 'Turns')).toBe(loop.turns);
  });
  expect(site.loops.length).toBeGreaterThan(0);
});
