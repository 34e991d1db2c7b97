import { describe, expect, it } from 'vitest';
import {
  addConduit,
  extractThings,
  insertCopies,
  joinInSeries,
  newConduit,
  placeLoop,
  removeConduit,
  removeThings,
  renameCircuit,
  splitCircuit,
  updateConduit
} from '#plan/edits/index';
import { demoSite } from '#plan/demo';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { firstShared, sharedLength } from '#plan/shared-way';
import { fullSite } from './site';

const isReadable = (site: Site): boolean => readSite(writeSite(site)).ok;
const withConduit = (): Site => {
  const site = fullSite();
  return addConduit(site, newConduit(site, ['C1', 'C2'], 12));
};
const circuitsOf = (site: Site) => site.conduits.map(({ circuits }) => circuits);

describe('conduits', () => {
  it('are added, changed and removed', () => {
    const site = withConduit();
    expect(site.conduits).toEqual([{ id: 'D1', name: '', circuits: ['C1', 'C2'], length: 12 }]);
    expect(isReadable(site)).toBe(true);
    const stated = updateConduit(site, 'D1', { name: 'Duct', mutualPerMetre_H: 3e-9 });
    expect(stated.conduits[0]).toMatchObject({ name: 'Duct', mutualPerMetre_H: 3e-9 });
    const usual = updateConduit(stated, 'D1', { mutualPerMetre_H: undefined });
    expect(usual.conduits[0]).not.toHaveProperty('mutualPerMetre_H');
    expect(removeConduit(usual, 'D1').conduits).toEqual([]);
    expect(removeConduit(usual, 'D2')).toBe(usual);
  });

  it('refuse what is not there, twice the same, and lengths that cannot be', () => {
    const site = withConduit();
    expect(updateConduit(site, 'D1', { circuits: ['C1', 'C9'] })).toBe(site);
    expect(updateConduit(site, 'D1', { circuits: ['C1', 'C1'] })).toBe(site);
    expect(updateConduit(site, 'D1', { length: -1 })).toBe(site);
    expect(updateConduit(site, 'D1', { mutualPerMetre_H: 1 })).toBe(site);
    expect(addConduit(site, { ...newConduit(site, [], 1), id: 'D1' })).toBe(site);
    expect(addConduit(site, newConduit(site, ['C9'], 1))).toBe(site);
  });

  it('no longer name circuits that are gone', () => {
    const site = withConduit();
    const withoutLoop = removeThings(site, [{ kind: 'loop', id: 'L3' }]);
    expect(circuitsOf(withoutLoop)).toEqual([['C1']]);
    const joined = joinInSeries(site, ['C1', 'C2']);
    expect(circuitsOf(joined)).toEqual([['C1']]);
    const taken = placeLoop(site, 'L3', { kind: 'after', loop: 'L1' });
    expect(circuitsOf(taken)).toEqual([['C1']]);
    for (const each of [withoutLoop, joined, taken]) expect(isReadable(each)).toBe(true);
  });

  it('stay as they are, and the same, when their circuits stay', () => {
    const site = withConduit();
    expect(removeThings(site, [{ kind: 'loop', id: 'L2' }]).conduits).toBe(site.conduits);
    expect(splitCircuit(site, 'C1').conduits).toBe(site.conduits);
  });

  it('follow a circuit’s new id', () => {
    expect(circuitsOf(renameCircuit(withConduit(), 'C1', 'north'))).toEqual([['north', 'C2']]);
  });

  it('are not copied, and copies of circuits do not lie in them', () => {
    const site = withConduit();
    const fragment = extractThings(site, [{ kind: 'loop', id: 'L3' }]);
    expect(fragment.conduits).toEqual([]);
    expect(insertCopies(site, fragment, [20, 0]).site.conduits).toBe(site.conduits);
  });
});

describe('lead-ins that are drawn side by side', () => {
  // all four go from the box (4.4, −3.5) by (12, −3.5) to (12, 6): 7.6 + 9.5 m
  const WAY = 17.1;

  it('have the length of what they share', () => {
    const site = demoSite();
    expect(sharedLength(site, ['C1', 'C2'])).toBeCloseTo(WAY, 6);
    expect(firstShared(site)).toEqual({ circuits: ['C1', 'C2', 'C3', 'C4'], length: WAY });
    expect(firstShared(site, new Set(['C1', 'C2', 'C3']))).toBeNull();
  });

  it('share nothing where one goes another way', () => {
    const site = demoSite();
    const circuits = site.circuits.map((circuit) =>
      circuit.id === 'C1'
        ? {
            ...circuit,
            leadIn: { ...circuit.leadIn, route: { ...circuit.leadIn.route!, via: [[4.4, 6] as const] } }
          }
        : circuit
    );
    const apart = { ...site, circuits };
    expect(sharedLength(apart, ['C1', 'C2'])).toBe(0);
    expect(firstShared(apart)?.circuits).toEqual(['C2', 'C3', 'C4']);
  });

  it('say nothing where they are not drawn', () => {
    expect(sharedLength(fullSite(), ['C1', 'C2'])).toBeNull();
    expect(sharedLength(demoSite(), ['C1'])).toBeNull();
    const site = demoSite();
    const circuits = site.circuits.map((circuit) =>
      circuit.id === 'C3' ? { ...circuit, leadIn: { ...circuit.leadIn, route: undefined } } : circuit
    );
    expect(sharedLength({ ...site, circuits }, ['C1', 'C2'])).toBeCloseTo(WAY, 6);
    expect(sharedLength({ ...site, circuits }, ['C1', 'C2', 'C3'])).toBeNull();
    expect(firstShared(fullSite())).toBeNull();
  });
});
