import { describe, expect, it } from 'vitest';
import { builtInCables, cableOf, cablesOf, isBuiltIn } from '#plan/catalogue/cables';
import {
  cableEntries,
  pavementEntries,
  testPlateEntries,
  unitEntries,
  vehicleEntries,
  wireEntries
} from '#plan/catalogue/entries';
import { pavementOf, pavements } from '#plan/catalogue/pavements';
import { builtInUnits, usualUnit } from '#plan/catalogue/units';
import { builtInVehicles, vehicleOf, vehiclesOf } from '#plan/catalogue/vehicles';
import { wireOf, builtInWires } from '#plan/catalogue/wires';
import { emptySite } from '#plan/read';
import { statedFrequency } from '#plan/unit-settings';
import type { Cable, Vehicle } from '#plan/schema';

const MU0 = 4e-7 * Math.PI;
const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);

describe('every catalogue', () => {
  it.each([
    ['builtInWires', wireEntries, builtInWires],
    ['cables', cableEntries, builtInCables],
    ['vehicles', vehicleEntries, builtInVehicles],
    ['pavements', pavementEntries, pavements],
    ['units', unitEntries, builtInUnits]
  ] as const)('fits its schema, names each entry once and gives sources: %s', (_, schema, entries) => {
    expect(schema.safeParse(entries).success).toBe(true);
    expect(new Set(ids(entries)).size).toBe(entries.length);
    for (const { source } of entries) expect(source).toMatch(/common practice|assumption|ASTM|formula/i);
  });
});

/** Of each list as its file has it. */
const FILES = [
  ['wires', wireEntries],
  ['cables', cableEntries],
  ['vehicles', vehicleEntries],
  ['test-plates', testPlateEntries],
  ['pavements', pavementEntries],
  ['units', unitEntries]
] as const;

describe('the data of the catalogue', () => {
  it.each(FILES)(
    'is taken as it stands, so nothing in it may be left to a default: %s',
    async (name, schema) => {
      const { default: data } = (await import(`../../src/plan/catalogue/${name}.json`)) as {
        default: unknown;
      };
      expect(schema.parse(data)).toStrictEqual(data);
    }
  );
});

describe('builtInWires', () => {
  it.each([
    ['awg12', 12],
    ['awg14', 14],
    ['awg16', 16],
    ['awg18', 18]
  ])('%s: 0.127 mm × 92^((36−n)/39), ASTM B258', (id, gauge) => {
    const exact = 0.127e-3 * 92 ** ((36 - gauge) / 39);
    // The catalogue is rounded to a micrometre.
    expect(Math.abs(wireOf(id, { wires: [] })!.conductorDiameter - exact)).toBeLessThan(0.5e-6);
  });

  it.each([
    ['mm2-1.5', 1.5],
    ['mm2-2.5', 2.5]
  ])('%s has the section in its name', (id, section) => {
    const diameter = wireOf(id, { wires: [] })!.conductorDiameter * 1000;
    expect((Math.PI * diameter ** 2) / 4).toBeCloseTo(section, 2);
  });

  it('have an insulation thicker than nothing', () => {
    for (const wire of builtInWires)
      expect(wire.insulatedDiameter).toBeGreaterThan(1.5 * wire.conductorDiameter);
    expect(wireOf('awg13', { wires: [] })).toBeUndefined();
  });
});

describe('lead-in cables', () => {
  // Internal inductance over its direct-current value at a√(ωµσ) = 2, 3, 4, 5: round-wire table, NBS Circular 74.
  const INTERNAL = new Map([
    ['pair-18', [0.9611, 0.8452]],
    ['pair-16', [0.8452, 0.6863]],
    ['pair-14', [0.8452, 0.6863]],
    ['pair-12', [0.6863, 0.556]]
  ] as const);
  const ARGUMENT = new Map([
    ['pair-18', [2, 3]],
    ['pair-16', [3, 4]],
    ['pair-14', [3, 4]],
    ['pair-12', [4, 5]]
  ] as const);

  it.each(builtInCables)('$id follows the two-wire line formula at 50 kHz', (cable) => {
    const { conductorDiameter, spacing } = cableEntries.element.parse(cable);
    const argument = (conductorDiameter / 2) * Math.sqrt((2 * Math.PI * 50e3 * MU0) / 1.7241e-8);
    const id = cable.id as 'pair-14';
    expect(argument).toBeGreaterThan(ARGUMENT.get(id)![0]);
    expect(argument).toBeLessThan(ARGUMENT.get(id)![1]);
    const [most, least] = INTERNAL.get(id)!.map(
      (y) => (MU0 / Math.PI) * (Math.acosh(spacing / conductorDiameter) + y / 4)
    );
    expect(cable.inductancePerMetre_H).toBeLessThan(most! * 1.002);
    expect(cable.inductancePerMetre_H).toBeGreaterThan(least! * 0.998);
  });

  it('pair-14 has 20 to 24 µH per 100 ft: test-loop figure notes, NEMA TS 1', () => {
    const per100ft = cableOf('pair-14', emptySite())!.inductancePerMetre_H! * 30.48;
    expect(per100ft).toBeGreaterThan(20e-6);
    expect(per100ft).toBeLessThan(24e-6);
  });

  it.each([
    ['pair-12', 1.93],
    ['pair-14', 3.07],
    ['pair-16', 4.89],
    ['pair-18', 7.77]
  ])('%s: %d Ω per 1000 ft of one solid conductor at 75 °C, NEC chapter 9 table 8', (id, table) => {
    const warm = cableOf(id, emptySite())!.resistancePerMetre_ohm! * (1 + 0.00393 * 55);
    expect(Math.abs(((warm / 2) * 304.8) / table - 1)).toBeLessThan(0.01);
  });

  it('give way to a cable of the site, which is not taken for a built-in one', () => {
    const own = {
      id: 'pair-14',
      name: 'Ours',
      resistancePerMetre_ohm: 0.03,
      inductancePerMetre_H: 8e-7,
      capacitancePerMetre_F: 9e-11
    } satisfies Cable;
    const site = { ...emptySite(), cables: [own] };
    expect(cableOf('pair-14', site)).toEqual(own);
    expect(isBuiltIn(cableOf('pair-14', emptySite())!)).toBe(true);
    expect(isBuiltIn(cableOf('pair-14', site)!)).toBe(false);
    expect(ids(cablesOf(site))).toEqual(['pair-14', 'pair-12', 'pair-16', 'pair-18']);
    expect(cableOf('k9', site)).toBeUndefined();
  });
});

describe('vehicles', () => {
  const plate: Vehicle = {
    id: 'v1',
    name: 'Plate',
    parts: [{ kind: 'plate', centre: [0, 0.5], width: 1.6, length: 4, height: 0.4 }]
  };
  const wheel: Vehicle = {
    id: 'car',
    name: 'A wheel',
    parts: [{ kind: 'ring', centre: [0, 0, 0.3], radius: 0.3, conductorRadius: 0.01, axis: [1, 0, 0] }]
  };
  const site = { ...emptySite(), vehicles: [plate, wheel] };

  it('include the classes that are asked for', () => {
    expect(ids(builtInVehicles)).toEqual(
      expect.arrayContaining([
        ...['car-small', 'car', 'suv', 'van', 'lorry', 'lorry-articulated', 'bus'],
        ...['motorcycle', 'motorcycle-small', 'bicycle', 'bicycle-steel', 'wheel']
      ])
    );
  });

  it('keep every part inside the outline and above the road', () => {
    for (const { parts, bodyWidth, bodyLength } of builtInVehicles) {
      for (const part of parts) {
        const [across, along] = part.kind === 'plate' ? [part.width / 2, part.length / 2] : [0, part.radius];
        expect(Math.abs(part.centre[0]) + across).toBeLessThanOrEqual(bodyWidth / 2);
        expect(Math.abs(part.centre[1]) + along).toBeLessThanOrEqual(bodyLength / 2);
        const lowest = part.kind === 'plate' ? part.height : part.centre[2] - part.radius;
        expect(lowest).toBeGreaterThan(0);
      }
    }
  });

  it('let only two-wheelers, and a wheel by itself, ride anywhere', () => {
    const anywhere = builtInVehicles.filter(({ paths }) => paths === 'anywhere');
    expect(ids(anywhere)).toEqual(['motorcycle', 'motorcycle-small', 'bicycle', 'bicycle-steel', 'wheel']);
  });

  it("draw a site's own vehicle by what its parts cover about its origin", () => {
    expect(vehicleOf('v1', site)).toMatchObject({ bodyWidth: 1.6, bodyLength: 5, paths: 'lane' });
    expect(vehicleOf('v1', site)?.parts).toBe(plate.parts);
  });

  it('say of each part what it stands for', () => {
    for (const { parts } of builtInVehicles) for (const { name } of parts) expect(name).toMatch(/^[A-Z]/);
  });

  it("draw a site's own vehicle by its outline where that is stated", () => {
    const stated = { ...plate, body: { width: 1.1, length: 4.5 } };
    const drawn = vehicleOf('v1', { vehicles: [stated] });
    expect(drawn).toMatchObject({ bodyWidth: 1.1, bodyLength: 4.5, paths: 'anywhere' });
  });

  it("put a site's own vehicle before a built-in one of the same id", () => {
    expect(vehicleOf('car', site)).toMatchObject({ name: 'A wheel', bodyLength: 0.6, paths: 'anywhere' });
    expect(ids(vehiclesOf(site)).filter((id) => id === 'car')).toHaveLength(1);
    expect(vehicleOf('tram', site)).toBeUndefined();
  });
});

describe('pavements', () => {
  it('lie inside their own range', () => {
    for (const { relativePermittivity, range } of pavements) {
      expect(relativePermittivity).toBeGreaterThanOrEqual(range[0]);
      expect(relativePermittivity).toBeLessThanOrEqual(range[1]);
    }
    expect(pavementOf(emptySite().pavement.material)?.id).toBe('asphalt');
    expect(pavementOf('cobbles of our own')).toBeUndefined();
  });
});

describe('units', () => {
  // FHWA handbook chapter 2, from memory, and common practice: 20 to 100 kHz, up to eight settings
  it.each(builtInUnits)(
    '$id runs between 20 and 100 kHz on a circuit of 100 µH, highest last',
    ({ settings_F }) => {
      const frequencies = settings_F.map((farads) => 1 / (2 * Math.PI * Math.sqrt(1e-4 * farads)));
      expect(frequencies.length).toBeLessThanOrEqual(8);
      expect(frequencies[0]).toBeGreaterThan(20e3);
      expect(frequencies.at(-1)).toBeLessThan(100e3);
      expect(frequencies.toSorted((a, b) => a - b)).toEqual(frequencies);
    }
  );

  // NEMA TS 1 and TS 2, from memory
  it.each(builtInUnits)('$id accepts 50 to 700 µH', ({ inductanceRange_H: [least, most] }) => {
    expect(least).toBeLessThanOrEqual(50e-6);
    expect(most).toBeGreaterThanOrEqual(700e-6);
  });

  it('scan in turn where nobody chose one, with two channels and four settings', () => {
    expect(usualUnit).toMatchObject({ channels: 2, scansInTurn: true, settings_F: { length: 4 } });
  });

  it('state frequencies in whole kilohertz where they state any', () => {
    const stated = builtInUnits.filter((unit) => unit.statedInductance_H !== undefined);
    expect(stated.length).toBeGreaterThan(0);
    for (const unit of stated)
      for (let setting = 1; setting <= unit.settings_F.length; setting++) {
        const kilohertz = statedFrequency(unit, setting)! / 1000;
        expect(kilohertz).toBeCloseTo(Math.round(kilohertz), 8);
      }
  });

  it('with one channel, with several in turn and with all at once are there', () => {
    expect(builtInUnits.some(({ channels }) => channels === 1)).toBe(true);
    expect(builtInUnits.some(({ channels, scansInTurn }) => channels > 2 && scansInTurn)).toBe(true);
    expect(builtInUnits.some(({ scansInTurn }) => !scansInTurn)).toBe(true);
  });
});
