import { describe, expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import type { Circuit, Reading, Site } from '#plan/schema';
import { site as schema } from '#plan/schema';
import { buildReading, formOf, readingSoFar } from '#ui/field-check/readings/build';
import {
  emptyForm,
  fieldsOf,
  formFrom,
  hasFigures,
  noConditions,
  NO_ENTRY,
  withoutYesterday,
  type Conditions,
  type Entry
} from '#ui/field-check/readings/form';

const site: Site = demoSite();
const circuit: Circuit = site.circuits[0]!;
const NOW = '2025-11-26T08:12';
const options = { now: NOW };
const conditions: Conditions = {
  ...noConditions('M. K.'),
  temperature: '12 °C',
  weather: 'wet',
  meterFrequency: '20 kHz',
  insulationVoltage_V: 500
};
const entry = (over: Partial<Entry>): Entry => ({ ...NO_ENTRY, ...over });

const built = (over: Partial<Entry>, more: Partial<Conditions> = {}, original?: Reading): Reading => {
  const made = buildReading(
    site,
    circuit,
    entry(over),
    { ...conditions, ...more },
    original ? { ...options, original } : options
  );
  if (made.kind !== 'reading') throw new Error(made.kind);
  return made.reading;
};

describe('a reading from the form', () => {
  test('at the unit is under the channel’s setting, and under none where its frequency is given', () => {
    const under = (channel: Partial<NonNullable<Circuit['channel']>>) => {
      const set: Circuit = { ...circuit, channel: { ...circuit.channel!, frequencySetting: 2, ...channel } };
      const given = { testPoint: 'unit', texts: { frequency_Hz: '61' } } as const;
      return readingSoFar(site, set, entry(given), conditions, options).setting;
    };
    expect(under({ frequency_Hz: null })).toBe(2);
    // "a number here overrides the setting": held against that setting, what was given would look wrong
    expect(under({ frequency_Hz: 61_000 })).toBeUndefined();
  });

  test('has what was typed, and what it was typed under', () => {
    const reading = built({
      texts: { inductance_H: '98', resistanceDc_ohm: '0.6', insulation_ohm: '>2000', q: ' ' },
      note: ' splice looked wet '
    });
    expect(reading).toEqual({
      id: 'R1',
      circuit: circuit.id,
      testPoint: 'cabinet',
      at: expect.stringMatching(/^2025-11-26T08:12:00[+-]\d\d:\d\d$/) as string,
      resistanceDc_ohm: 0.6,
      inductance_H: 98e-6,
      overRange: ['insulation_ohm'],
      meterFrequency_Hz: 20_000,
      insulationVoltage_V: 500,
      temperature_C: 12,
      weather: 'wet',
      by: 'M. K.',
      note: 'splice looked wet'
    });
    expect(schema.shape.readings.unwrap().element.safeParse(reading).success).toBe(true);
  });

  test('says nothing of what was not measured', () => {
    const reading = built({ texts: { resistanceDc_ohm: '0.6' } });
    expect(reading).not.toHaveProperty('meterFrequency_Hz');
    expect(reading).not.toHaveProperty('insulationVoltage_V');
    expect(reading).not.toHaveProperty('isCommissioning');
  });

  test('at a loop names the loop, at the unit the setting and the vehicle, and no meter’s frequency', () => {
    const loop = circuit.strings[0]![0]!.loop;
    expect(built({ testPoint: 'loop', texts: { q: '40' } }).loop).toBe(loop);
    const atUnit = built({ testPoint: 'unit', texts: { deltaLOverL: '2', inductance_H: '92' } });
    expect(atUnit).toMatchObject({
      deltaLOverL: -0.02,
      vehicle: circuit.detect[0],
      setting: circuit.channel!.frequencySetting
    });
    expect(atUnit).not.toHaveProperty('meterFrequency_Hz');
  });

  test('is not made of nothing, nor past a field that cannot be read', () => {
    const make = (texts: Entry['texts'], more: Partial<Conditions> = {}) =>
      buildReading(site, circuit, entry({ texts }), { ...conditions, ...more }, options);
    expect(make({ q: '' })).toEqual({ kind: 'nothing' });
    expect(make({ q: 'abc', inductance_H: '98' })).toEqual({ kind: 'refused', fields: ['q'] });
    expect(make({ q: '12' }, { temperature: 'warm' })).toEqual({ kind: 'refused', fields: ['temperature'] });
  });

  test('while something cannot be read the rest is judged all the same', () => {
    const soFar = readingSoFar(
      site,
      circuit,
      entry({ texts: { q: 'ab', inductance_H: '98' } }),
      conditions,
      options
    );
    expect(soFar.inductance_H).toBeCloseTo(98e-6, 12);
    expect(soFar).not.toHaveProperty('q');
  });
});

describe('a kept reading in the form', () => {
  const kept = {
    id: 'R7',
    circuit: circuit.id,
    testPoint: 'cabinet',
    at: '2024-05-01T09:30:41-07:00',
    // more digits than a field shows
    inductance_H: 9.812345678901e-5 / 3,
    q: 14,
    overRange: ['insulation_ohm'],
    temperature_C: 31.4,
    meterFrequency_Hz: 1_000,
    instruments: ['M1'],
    by: 'A. B.',
    isCommissioning: true,
    survey: { crew: 3 }
  } as const satisfies Reading & { readonly survey: object };

  test('left as it is, is the same to the last bit, also what this release does not know', () => {
    const { entry: shown, conditions: under } = formOf(site, kept);
    expect(built(shown, under, kept)).toEqual(kept);
  });

  test('a changed figure changes that figure, a cleared one goes', () => {
    const { entry: shown, conditions: under } = formOf(site, kept);
    const changed = built({ ...shown, texts: { ...shown.texts, q: '', inductance_H: '97' } }, under, kept);
    const { q, ...rest } = kept;
    expect(q).toBe(14);
    expect(changed).toEqual({ ...rest, inductance_H: 97e-6 });
  });

  test('one of an old file, without id, time and place, keeps being one', () => {
    const old: Reading = { circuit: circuit.id, resistanceDc_ohm: 0.8 };
    const { entry: shown, conditions: under } = formOf(site, old);
    expect(built(shown, under, old)).toEqual({ ...old, testPoint: 'cabinet' });
  });
});

describe('the form as it is stored', () => {
  const form = {
    ...emptyForm('M. K.'),
    circuit: circuit.id,
    entries: { [circuit.id]: entry({ texts: { q: '14' }, units: { inductance_H: 'mH' } }) },
    conditions,
    touched: NOW
  };

  test('is read back as it was', () => {
    expect(formFrom(JSON.parse(JSON.stringify(form)), '')).toEqual(form);
  });

  test.each([undefined, null, 7, 'x', [], { entries: 3, conditions: [] }, { editing: { place: 'a' } }])(
    'what does not fit is as in an empty one: %o',
    (found) => {
      expect(formFrom(found, 'M. K.')).toEqual(emptyForm('M. K.'));
    }
  );

  test('the weather of another day goes, unless figures wait that were read in it', () => {
    const empty = { ...form, entries: {} };
    expect(withoutYesterday(empty, '2025-11-26T19:00')).toBe(empty);
    expect(withoutYesterday(empty, '2025-11-27T07:00').conditions).toMatchObject({
      by: 'M. K.',
      temperature: '',
      weather: null,
      at: null
    });
    expect(withoutYesterday(form, '2025-11-27T07:00')).toBe(form);
  });

  test('of another day is none of commissioning until that is said again', () => {
    const onTheDay = { ...emptyForm('M. K.'), touched: NOW };
    const ticked = { ...onTheDay, conditions: { ...onTheDay.conditions, isCommissioning: true } };
    expect(withoutYesterday(ticked, '2025-11-26T19:00').conditions.isCommissioning).toBe(true);
    expect(withoutYesterday(ticked, '2026-01-13T07:00').conditions.isCommissioning).toBe(false);
  });

  test('what was typed elsewhere is never kept unseen', () => {
    const typed = entry({ testPoint: 'unit', texts: { q: '14' } });
    expect(fieldsOf(typed)).toContain('q');
    expect(hasFigures(typed)).toBe(true);
    expect(hasFigures(entry({ texts: { q: '  ' } }))).toBe(false);
  });
});
