/** Every kind of line says how it came about, in both languages, with every number filled in. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cautionText, howText } from '#analysis/takeoff/how';
import { groupName, itemName, kindName } from '#analysis/takeoff/names';
import { TAKEOFF_GROUPS, TAKEOFF_KINDS } from '#analysis/takeoff/results';
import { speakLanguage } from '#i18n/load';
import { LANGUAGES } from '#i18n/message';
import { siteOf, circuit, loop, square } from '../support/sites';
import { box, cabinet, drawnTail, taken } from './lines';

const extras = [{ id: 'X1', name: 'Permit', amount: 1 }];
const route = { from: 'm1', to: 'm2', allowance: 1 };
const fields = {
  marks: [box('m1', [9, -9]), cabinet('m2', [30, -9]), { id: 'm3', kind: 'conduit', points: [[9, -9], [20, -9]] }], // prettier-ignore
  loops: [
    loop('L1', square(0, 0), drawnTail('m1', [], 1)),
    loop('L2', square(1.8, 0), { tail: { length: 3 } }),
    loop('L3', { kind: 'quadrupole', centre: [9, 9], width: 2, length: 4 })
  ],
  circuits: [
    circuit('C1', ['L1', 'L2'], {
      channel: null,
      leadIn: { cable: 'pair-14', length: 0, route, further: [{ cable: 'pair-16', length: 5 }] }
    }),
    circuit('C2', ['L3'], { channel: null })
  ],
  conduits: [
    { id: 'D1', circuits: ['C1', 'C2'], length: 30 },
    { id: 'D2', circuits: [], length: 3 }
  ],
  estimate: { extras }
};
const sites = [
  fields,
  { ...fields, estimate: { extras, coreHoles: true } },
  { ...fields, estimate: { extras, bladeDiameter_m: 0.09 } }
].map(taken);
const lines = sites.flatMap((each) => each.lines);

describe.each(LANGUAGES)('the take-off in %s', (language) => {
  beforeAll(() => speakLanguage(language, ['views']));
  afterAll(() => speakLanguage('en', ['views']));

  it('has every kind of line in these sites', () => {
    expect(new Set(lines.map(({ what }) => what))).toEqual(new Set(TAKEOFF_KINDS));
  });

  it('says how each came about, with nothing left open', () => {
    for (const { how } of lines) {
      const text = howText(how, ({ value }) => value.toFixed(3));
      expect(text).not.toMatch(/[{}]|takeoff\.|undefined|NaN/);
      for (const value of Object.values(how.values))
        expect(text).toContain(typeof value === 'string' ? value : value.value.toFixed(3));
    }
    const [caution] = sites[2]!.cautions;
    expect(cautionText(caution!, ({ value }) => value.toFixed(3))).toMatch(/0[.,]090.*0[.,]050/);
    const [reach] = taken({ loops: [loop('L1', square(0, 0)), loop('L2', square(0, 1.9))] }).cautions;
    expect(cautionText(reach!, ({ value }) => String(value))).toMatch(/: 4 \(L1, L2\)/);
  });

  it('has names for kinds, groups and items', () => {
    const site = siteOf({ estimate: { extras } });
    for (const kind of TAKEOFF_KINDS) expect(kindName(kind)).not.toMatch(/takeoff\./);
    for (const group of TAKEOFF_GROUPS) expect(groupName(group)).not.toMatch(/takeoff\./);
    const items = new Set(lines.map(({ item }) => item));
    for (const item of items) {
      const name = itemName(site, item, (metres) => `${(metres * 1000).toFixed(0)} mm`);
      expect(name).not.toMatch(/[{}:]|takeoff\.|NaN/);
    }
    expect(itemName(site, 'saw:50x6.35', (metres) => metres.toFixed(5))).toMatch(/0\.05000.*0\.00635/);
    expect(itemName(site, 'extra:X1', String)).toBe('Permit');
    expect(itemName(site, 'what:ever', String)).toBe('what:ever');
  });
});
