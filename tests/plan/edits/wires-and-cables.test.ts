import { describe, expect, it } from 'vitest';
import {
  addCable,
  addLeadInPart,
  addWire,
  newCable,
  newWire,
  removeCable,
  removeLeadInPart,
  removeWire,
  swapLeadInParts,
  updateCable,
  updateLeadInPart,
  updateLoop,
  updateWire,
  usesOfCable,
  usesOfWire
} from '#plan/edits/index';
import { COUNTS } from '#plan/bounds';
import { cableOf } from '#plan/catalogue/cables';
import { wireOf } from '#plan/catalogue/wires';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { fullSite } from './site';

const isReadable = (site: Site): boolean => readSite(writeSite(site)).ok;
const awg14 = (site: Site) => wireOf('awg14', site)!;
const pair = (site: Site) => cableOf('pair-14', site)!;

describe('own wires', () => {
  it('begin as another wire, and are changed within what a wire can be', () => {
    const site = fullSite();
    const next = addWire(site, newWire(site, awg14(site), 'Stranded'));
    // 14 AWG, ASTM B258: 1.628 mm
    expect(next.wires).toMatchObject([{ id: 'w1', name: 'Stranded', conductorDiameter: 1.628e-3 }]);
    expect(isReadable(next)).toBe(true);
    expect(updateWire(next, 'w1', { insulatedDiameter: 5e-3 }).wires[0]?.insulatedDiameter).toBe(5e-3);
    expect(updateWire(next, 'w1', { insulatedDiameter: 1e-3 })).toBe(next);
    expect(updateWire(next, 'awg14', { name: 'mine' })).toBe(next);
  });

  it('cannot be removed while a loop is wound with them', () => {
    const site = fullSite();
    const added = addWire(site, newWire(site, awg14(site), 'Stranded'));
    const used = updateLoop(added, 'L2', { wire: 'w1' });
    expect(usesOfWire(used, 'w1')).toEqual(['L2']);
    expect(removeWire(used, 'w1')).toBe(used);
    expect(removeWire(added, 'w1').wires).toEqual([]);
  });

  it('never take an id that is used or built in', () => {
    const site = fullSite();
    const added = addWire(site, newWire(site, awg14(site), 'one'));
    expect(newWire(added, awg14(added), 'two').id).toBe('w2');
    expect(addWire(added, { ...newWire(added, awg14(added), 'two'), id: 'w1' })).toBe(added);
  });
});

describe('own cables', () => {
  it('like a built-in one are computed from its geometry', () => {
    const site = fullSite();
    const cable = newCable(site, pair(site), 'Trench cable');
    expect(cable).not.toHaveProperty('resistancePerMetre_ohm');
    expect(cable).not.toHaveProperty('builtIn');
    expect(cable.conductorDiameter).toBe(pair(site).conductorDiameter);
    expect(isReadable(addCable(site, cable))).toBe(true);
  });

  it('have every constant stated or a geometry to compute it from', () => {
    const site = fullSite();
    expect(updateCable(site, 'k1', { inductancePerMetre_H: undefined })).toBe(site);
    const shaped = updateCable(site, 'k1', { conductorDiameter: 1.6e-3, spacing: 3.8e-3 });
    const computed = updateCable(shaped, 'k1', { inductancePerMetre_H: undefined });
    expect(computed.cables[0]).not.toHaveProperty('inductancePerMetre_H');
    expect(isReadable(computed)).toBe(true);
    expect(updateCable(computed, 'k1', { spacing: undefined })).toBe(computed);
    expect(updateCable(computed, 'k1', { spacing: 1e-3 })).toBe(computed);
  });

  it('cannot be removed while a lead-in has them, in whatever place', () => {
    const site = addLeadInPart(fullSite(), 'C2', { cable: 'k1', length: 5 });
    expect(usesOfCable(site, 'k1')).toEqual(['C1', 'C2']);
    expect(removeCable(site, 'k1')).toBe(site);
    const other = updateLeadInPart(site, 'C1', 0, { cable: 'pair-12' });
    expect(removeCable(other, 'k1')).toBe(other);
    expect(removeCable(removeLeadInPart(other, 'C2', 1), 'k1').cables).toEqual([]);
  });
});

describe('cables in a row', () => {
  const lengths = (site: Site) => {
    const { leadIn } = site.circuits[1]!;
    return [leadIn.length, ...(leadIn.further ?? []).map(({ length }) => length)];
  };

  it('are added at the cabinet’s end, ordered and taken away', () => {
    let site = fullSite();
    site = addLeadInPart(site, 'C2', { cable: 'pair-12', length: 7 });
    site = addLeadInPart(site, 'C2', { cable: 'k1', length: 3 });
    expect(lengths(site)).toEqual([25, 7, 3]);
    expect(lengths(swapLeadInParts(site, 'C2', 0))).toEqual([7, 25, 3]);
    expect(lengths(removeLeadInPart(site, 'C2', 0))).toEqual([7, 3]);
    expect(isReadable(site)).toBe(true);
    const one = removeLeadInPart(removeLeadInPart(site, 'C2', 2), 'C2', 1);
    expect(one.circuits[1]?.leadIn).toEqual({ cable: 'pair-14', length: 25 });
  });

  it('refuse what cannot be', () => {
    const site = fullSite();
    expect(removeLeadInPart(site, 'C2', 0)).toBe(site);
    expect(addLeadInPart(site, 'C2', { cable: 'rope', length: 3 })).toBe(site);
    expect(addLeadInPart(site, 'C2', { cable: 'k1', length: -3 })).toBe(site);
    expect(updateLeadInPart(site, 'C2', 4, { length: 3 })).toBe(site);
    expect(swapLeadInParts(site, 'C2', 0)).toBe(site);
    const full = Array.from({ length: 20 }).reduce<Site>(
      (result) => addLeadInPart(result, 'C2', { cable: 'k1', length: 1 }),
      site
    );
    expect(full.circuits[1]?.leadIn.further).toHaveLength(COUNTS.cablesInRow);
  });
});
