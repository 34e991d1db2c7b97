/** Files of every version that was ever written stay readable, with the meaning that they had. */
import { describe, expect, it } from 'vitest';
import { readSite, writeSite } from '#plan/read';
import { archived } from './documents';

function siteOf(text: string) {
  const reading = readSite(text);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

/** As the file has them; lists that came later are empty where a file does not know them. */
const fields = (name: string): object => ({
  wires: [],
  conduits: [],
  paths: [],
  underlays: [],
  ...(JSON.parse(archived(name)) as object)
});

const FULL = ['v1-full', 'v1-electrical', 'v1-frequencies', 'v1-passing'];

describe('version 1', () => {
  it.each(FULL)('reads every field of %s as it stands, also those that it does not know', (name) => {
    expect(siteOf(archived(name))).toEqual(fields(name));
  });

  it.each(FULL)('writes every field of %s back', (name) => {
    expect(JSON.parse(writeSite(siteOf(archived(name))))).toEqual(fields(name));
  });

  it('writes declared fields in a fixed order and strange ones behind them', () => {
    const text = writeSite(siteOf(archived('v1-full')));
    const keys = Object.keys(JSON.parse(text) as object);
    expect(keys.slice(0, 4)).toEqual(['format', 'version', 'name', 'displayUnits']);
    expect(keys.at(-1)).toBe('plannedBy');
  });

  it('fills in what may be left out', () => {
    const site = siteOf(archived('v1-least'));
    expect(site).toMatchObject({
      name: 'Untitled site',
      displayUnits: 'metric',
      temperature_C: 20,
      pavement: { material: 'asphalt', relativePermittivity: 5 },
      lanes: [],
      marks: [],
      cables: [],
      vehicles: [],
      steel: [],
      readings: [],
      probes: [{ heading: 90 }]
    });
    expect(site.loops[0]).toMatchObject({
      name: '',
      slot: { relativePermittivity: 4 },
      tail: { length: 0 },
      shape: { rotation: 0, cornerCut: 0 }
    });
    expect(site.circuits[0]).toMatchObject({
      strings: [[{ loop: 'L1', reversed: false }]],
      detect: ['car'],
      channel: {
        frequencySetting: 1,
        frequency_Hz: null,
        releaseRatio: 0.6,
        output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
      }
    });
  });

  it('reads the contract example', () => {
    const site = siteOf(archived('contract'));
    expect(site.loops.map(({ shape }) => shape.kind)).toEqual([
      'rectangle',
      'rectangle',
      'circle',
      'quadrupole',
      'diagonal',
      'polygon'
    ]);
    expect(site.circuits.map(({ strings }) => strings.map((string) => string.length))).toEqual([[1], [2], [1, 1]]);
  });
});
