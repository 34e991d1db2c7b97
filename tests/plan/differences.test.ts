/** What differs between two designs, as data that can be said in words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differencesBetween, type Difference, type FieldDifference } from '#plan/differences/index';
import { addProbe, moveThings, removeThings, setShape, updateLoop, updateSite } from '#plan/edits/index';
import type { Circuit, Loop, Site } from '#plan/schema';
import { samples } from './samples';
import { fullSite } from './edits/site';

const field = (difference: Difference | undefined, name: string): FieldDifference | undefined =>
  difference?.fields.find((each) => each.field === name);

const withLoop = (site: Site, id: string, patch: Partial<Loop>): Site => ({
  ...site,
  loops: site.loops.map((each) => (each.id === id ? { ...each, ...patch } : each))
});
const withCircuit = (site: Site, id: string, patch: Partial<Circuit>): Site => ({
  ...site,
  circuits: site.circuits.map((each) => (each.id === id ? { ...each, ...patch } : each))
});

describe('differences', () => {
  it('say which number of which thing changed, in SI', () => {
    const site = fullSite();
    expect(differencesBetween(site, updateLoop(site, 'L1', { turns: 4 }))).toEqual([
      {
        thing: 'loop',
        id: 'L1',
        name: 'Loop L1',
        change: 'changed',
        fields: [{ field: 'turns', is: 'count', before: 3, after: 4 }]
      }
    ]);
  });

  it('tell shape, sides and place apart', () => {
    const site = fullSite();
    const wider = setShape(site, 'L1', { ...(site.loops[0]!.shape as { kind: 'rectangle' } & Loop['shape']), width: 2.4 }); // prettier-ignore
    expect(differencesBetween(site, wider)).toMatchObject([
      { id: 'L1', fields: [{ field: 'width', is: 'length', before: 1.8, after: 2.4 }] }
    ]);
    const moved = moveThings(site, [{ kind: 'loop', id: 'L1' }], [0.5, 0]);
    expect(differencesBetween(site, moved)).toMatchObject([
      { id: 'L1', fields: [{ field: 'place', is: 'drawn', before: null, after: null }] }
    ]);
    const round = setShape(site, 'L1', { kind: 'circle', centre: [0, 0], diameter: 2 });
    const [difference] = differencesBetween(site, round);
    expect(field(difference, 'shape')).toEqual({
      field: 'shape',
      is: 'word',
      before: 'rectangle',
      after: 'circle'
    });
    expect(field(difference, 'diameter')).toMatchObject({ before: null, after: 2 });
    expect(field(difference, 'width')).toMatchObject({ before: 1.8, after: null });
    expect(field(difference, 'place')).toBeUndefined();
  });

  it('name what was added, what was removed, and what went with it', () => {
    const site = fullSite();
    const without = removeThings(site, [{ kind: 'loop', id: 'L3' }]);
    const told = differencesBetween(site, without).map(({ thing, id, change, name }) => [
      thing,
      id,
      change,
      name
    ]);
    expect(told).toEqual([
      ['loop', 'L3', 'removed', 'Loop L3'],
      ['circuit', 'C2', 'removed', 'C2']
    ]);
    expect(differencesBetween(without, site).map(({ change }) => change)).toEqual(['added', 'added']);
  });

  it('tell wiring, cables, vehicles and units by the names that each design has for them', () => {
    const site = fullSite();
    const rewired = withCircuit(withLoop(site, 'L2', { name: 'Rear' }), 'C1', {
      strings: [[{ loop: 'L1', reversed: false }], [{ loop: 'L2', reversed: false }]],
      detect: ['car', 'own'],
      leadIn: { cable: 'pair-14', length: 45, further: [{ cable: 'k1', length: 5 }] },
      channel: { ...site.circuits[0]!.channel!, tripThreshold: 0.002, number: 1 }
    });
    const circuit = differencesBetween(site, rewired).find(({ thing }) => thing === 'circuit');
    expect(field(circuit, 'wiring')).toMatchObject({
      is: 'text',
      before: 'Loop L1 + \u2212Loop L2',
      after: 'Loop L1 ∥ Rear'
    });
    expect(field(circuit, 'leadInLength')).toMatchObject({ is: 'length', before: 40, after: 50 });
    expect(field(circuit, 'cable')?.before).toBe('k1');
    expect(field(circuit, 'vehicles')).toMatchObject({ is: 'names', after: [expect.any(String), 'own'] });
    expect(field(circuit, 'tripThreshold')).toMatchObject({ is: 'ratio', before: 0.001, after: 0.002 });
    expect(field(circuit, 'channelNumber')).toBeUndefined();
  });

  it('do not see in which order vehicles and circuits stand', () => {
    const site = fullSite();
    const both = withCircuit(site, 'C1', { detect: ['car', 'own'] });
    expect(differencesBetween(both, withCircuit(site, 'C1', { detect: ['own', 'car'] }))).toEqual([]);
    const conduit = (circuits: readonly string[]): Site => ({
      ...site,
      conduits: [{ ...site.conduits[0]!, id: 'q1', name: 'Q', length: 5, circuits }]
    });
    expect(differencesBetween(conduit(['C1', 'C2']), conduit(['C2', 'C1']))).toEqual([]);
    expect(differencesBetween(conduit(['C1', 'C2']), conduit(['C1']))).toHaveLength(1);
  });

  it('count what is of no single thing as the site’s', () => {
    const site = fullSite();
    const changed = updateSite(site, { temperature_C: 5, notes: 'frost' });
    expect(differencesBetween(site, changed)).toEqual([
      {
        thing: 'site',
        id: '',
        name: null,
        change: 'changed',
        fields: [
          { field: 'temperature', is: 'temperature', before: 20, after: 5 },
          { field: 'notes', is: 'text', before: null, after: 'frost' }
        ]
      }
    ]);
  });

  it('leave out what belongs to the site, and locks', () => {
    const site = fullSite();
    const same: Site = { ...site, name: 'Elsewhere', readings: [], loops: site.loops.map((each) => ({ ...each, locked: true })) }; // prettier-ignore
    expect(differencesBetween(site, same)).toEqual([]);
  });

  it('find a vehicle that was put elsewhere, whatever its place in the list', () => {
    const site = fullSite();
    const added = addProbe(site, { vehicle: 'car', at: [9, 9], heading: 90 });
    expect(differencesBetween(site, added)).toMatchObject([{ thing: 'probe', id: '2', change: 'added' }]);
    const turned = { ...site, probes: site.probes.toReversed() };
    expect(differencesBetween(site, turned)).toEqual([]);
    const [own, car] = site.probes;
    const moved = { ...site, probes: [{ ...car!, at: [1, 1] as const }, own!] };
    expect(differencesBetween(site, moved)).toMatchObject([
      { thing: 'probe', id: '0', change: 'changed', fields: [{ field: 'place' }] }
    ]);
  });
});

describe('differences of any two drawings', () => {
  const sites = [fullSite(), ...samples.map(({ site }) => site)];
  const any = fc.nat({ max: sites.length - 1 }).map((index) => sites[index]!);

  it('are none between a drawing and itself, a copy of it, and one whose lists stand in another order', () => {
    for (const site of sites) {
      expect(differencesBetween(site, site)).toEqual([]);
      expect(differencesBetween(site, structuredClone(site))).toEqual([]);
      const turned = structuredClone(site);
      const lists = ['loops', 'circuits', 'units', 'lanes', 'marks', 'steel', 'paths', 'conduits', 'wires', 'cables', 'vehicles', 'probes'] as const; // prettier-ignore
      const reversed = {
        ...turned,
        ...Object.fromEntries(lists.map((key) => [key, turned[key].toReversed()]))
      };
      expect(differencesBetween(site, reversed as Site)).toEqual([]);
    }
  });

  it('are the same the other way round, with before and after changed about', () => {
    const BACK = { added: 'removed', removed: 'added', changed: 'changed' } as const;
    const keyed = (all: readonly Difference[], isBack: boolean) =>
      all
        .filter(({ thing }) => thing !== 'probe')
        .map(({ thing, id, change, fields }) => {
          const pairs = fields.map(({ field: name, before, after }) => [name, ...(isBack ? [after, before] : [before, after])]); // prettier-ignore
          return JSON.stringify([thing, id, isBack ? BACK[change] : change, pairs]);
        })
        .toSorted();
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(keyed(differencesBetween(a, b), false)).toEqual(keyed(differencesBetween(b, a), true));
      }),
      { seed: 577_215, numRuns: 120 }
    );
  });
});
