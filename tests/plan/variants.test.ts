/** Designs kept beside the present one: in the document, in a file, and as sites of their own to be assessed. */
import { describe, expect, it } from 'vitest';
import {
  branchFrom,
  keepOver,
  keepVariant,
  noteVariant,
  removeThings,
  removeVariant,
  renameVariant,
  restoreVariant,
  switchTo,
  updateLoop,
  updateSite
} from '#plan/edits/index';
import { emptySite, readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { site as schema } from '#plan/schema';
import {
  DESIGN_FIELDS,
  designOf,
  designSite,
  isKept,
  variantOf,
  withDesign,
  withoutVariants
} from '#plan/variants';
import { archived } from '../archive/documents';
import { HOSTILE } from '../support/hostile-names';
import { fullSite } from './edits/site';

const turns = (site: Site) => site.loops[0]?.turns;
const read = (text: string): Site => {
  const reading = readSite(text);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
};
const reread = (site: Site): Site => read(writeSite(site));

/** Three turns kept as V1, four as V2, five in hand and not kept. */
const inHand = (): Site => {
  const first = keepVariant(fullSite(), 'Three turns', '2026-02-03T10:00:00Z');
  const second = keepVariant(updateLoop(first, 'L1', { turns: 4 }), 'Four turns');
  return updateLoop(second, 'L1', { turns: 5 });
};

describe('a variant', () => {
  it('is the present design under a name, and shares everything with it', () => {
    const site = keepVariant(fullSite(), '  Three turns ', '2026-02-03T10:00:00Z');
    expect(site.variant).toBe('V1');
    expect(site.variants).toMatchObject([{ id: 'V1', name: 'Three turns', kept: '2026-02-03T10:00:00Z' }]);
    expect(site.variants?.[0]?.design.loops).toBe(site.loops);
    expect(isKept(site)).toBe(true);
    expect(isKept(updateLoop(site, 'L1', { turns: 9 }))).toBe(false);
    expect(isKept(fullSite())).toBe(false);
  });

  it('is known again by what it says after a file was read', () => {
    const site = keepVariant(fullSite(), 'Three turns');
    const again = reread(site);
    expect(again).toEqual(site);
    expect(again.variants?.[0]?.design.loops).not.toBe(again.loops);
    expect(isKept(again)).toBe(true);
  });

  it('holds what a design is made of and nothing of the site', () => {
    const site = keepVariant(read(archived('v1-full')), 'All');
    const { design } = site.variants![0]!;
    const ofSite = ['format', 'version', 'name', 'displayUnits', 'underlays', 'layers', 'readings', 'fieldCheck', 'estimate', 'sheet', 'variant', 'variants']; // prettier-ignore
    expect([...DESIGN_FIELDS, ...ofSite].toSorted()).toEqual(Object.keys(schema.shape).toSorted());
    expect(Object.keys(design).filter((key) => ofSite.includes(key))).toEqual([]);
    expect(withDesign(site, designOf(site))).toEqual(site);
  });

  it('takes optional fields with it, and leaves none behind', () => {
    const bare = keepVariant(fullSite(), 'Bare');
    const noted = updateSite(bare, { notes: 'cold', temperatureRange_C: [-10, 40] });
    const both = keepVariant(noted, 'Noted');
    expect(restoreVariant(both, 'V1')).not.toHaveProperty('notes');
    expect(restoreVariant(both, 'V1')).not.toHaveProperty('temperatureRange_C');
    expect(restoreVariant(restoreVariant(both, 'V1'), 'V2').notes).toBe('cold');
  });

  it.each(HOSTILE.filter((name) => name.length <= 200 && name.trim() !== ''))(
    'may be called %j, and keeps the name through a file',
    (name) => {
      const site = keepVariant(fullSite(), name);
      expect(site.variants?.[0]?.name).toBe(name.trim());
      expect(reread(site)).toEqual(site);
    }
  );

  it('is not kept under no name, one that is too long, or as the twenty-fifth', () => {
    const site = fullSite();
    expect(keepVariant(site, '  ')).toBe(site);
    expect(keepVariant(site, 'x'.repeat(201))).toBe(site);
    const names = Array.from({ length: 24 }, (_, index) => `V ${index}`);
    const full = names.reduce((each, name) => keepVariant(each, name), site);
    expect(full.variants).toHaveLength(24);
    expect(keepVariant(full, 'one more')).toBe(full);
    const loose = withoutVariants(full);
    const working = { ...updateLoop(loose, 'L1', { turns: 7 }), variants: full.variants };
    expect(switchTo(working, 'V1', 'Before')).toBe(working);
  });
});

describe('going from one design to another', () => {
  it('keeps the present one first, over the variant that it is a working state of', () => {
    const site = switchTo(inHand(), 'V1', 'Before');
    expect([site.variant, turns(site)]).toEqual(['V1', 3]);
    expect(site.variants?.map(({ design }) => design.loops[0]?.turns)).toEqual([3, 5]);
    expect(isKept(site)).toBe(true);
    expect(turns(switchTo(site, 'V2', 'Before'))).toBe(5);
  });

  it('keeps one that is nobody’s under the name given, unless a variant holds it already', () => {
    const loose = removeVariant(inHand(), 'V2');
    expect([loose.variant, turns(loose)]).toEqual([undefined, 5]);
    const switched = switchTo(loose, 'V1', 'Before', '2026-02-04T09:00:00Z');
    expect(switched.variants?.map(({ name, kept, design }) => [name, kept, design.loops[0]?.turns])).toEqual([
      ['Three turns', '2026-02-03T10:00:00Z', 3],
      ['Before', '2026-02-04T09:00:00Z', 5]
    ]);
    const same = removeVariant(switchTo(inHand(), 'V1', 'Before'), 'V1');
    const alike = keepVariant(keepVariant(same, 'a'), 'b');
    const free = removeVariant(alike, alike.variant!);
    expect(switchTo(free, 'V2', 'Before').variants).toHaveLength(2);
  });

  it('is nothing where one is already there, or nothing is', () => {
    const site = inHand();
    expect(switchTo(site, 'V2', 'Before')).toBe(site);
    expect(switchTo(site, 'V9', 'Before')).toBe(site);
    expect(restoreVariant(site, 'V9')).toBe(site);
    expect(keepOver(site, 'V9')).toBe(site);
  });

  it('goes back to a variant as it was kept, or keeps over it', () => {
    expect(turns(restoreVariant(inHand(), 'V2'))).toBe(4);
    const over = keepOver(inHand(), 'V1', '2026-03-01T00:00:00Z');
    expect(over.variant).toBe('V1');
    expect(over.variants?.map(({ design, kept }) => [design.loops[0]?.turns, kept])).toEqual([
      [5, '2026-03-01T00:00:00Z'],
      [4, undefined]
    ]);
    const settled = restoreVariant(inHand(), 'V2');
    expect(restoreVariant(settled, 'V2')).toBe(settled);
    expect(keepOver(settled, 'V2')).toBe(settled);
  });

  it('keeps what a newer program wrote into a variant that is kept over', () => {
    const site = inHand();
    const [first, second] = site.variants!;
    const newer = { ...first!, design: { ...first!.design, ofLater: { a: 1 } } };
    const over = keepOver({ ...site, variants: [newer, second!] }, 'V1');
    expect(over.variants?.[0]?.design).toMatchObject({ ofLater: { a: 1 } });
    expect(over.variants?.[0]?.design.loops[0]?.turns).toBe(5);
  });

  it('branches from a variant as it was kept, with the present design kept too', () => {
    const site = branchFrom(inHand(), 'V2', 'Four, another way');
    expect([site.variant, turns(site)]).toEqual(['V3', 4]);
    expect(site.variants?.map(({ design }) => design.loops[0]?.turns)).toEqual([3, 5, 4]);
    expect(branchFrom(inHand(), null, 'Five').variants?.map(({ name }) => name)).toEqual([
      'Three turns',
      'Four turns',
      'Five'
    ]);
  });

  it('renames, notes and removes', () => {
    const site = inHand();
    expect(variantOf(renameVariant(site, 'V1', ' 3 '), 'V1')?.name).toBe('3');
    expect(renameVariant(site, 'V1', '')).toBe(site);
    const noted = noteVariant(site, 'V1', 'as tendered');
    expect(variantOf(noted, 'V1')?.note).toBe('as tendered');
    expect(noteVariant(noted, 'V1', '')).toEqual(site);
    const empty = removeVariant(removeVariant(site, 'V1'), 'V2');
    expect(empty).not.toHaveProperty('variants');
    expect(empty).not.toHaveProperty('variant');
    expect(turns(empty)).toBe(5);
  });
});

describe('readings', () => {
  const circuitsRead = ({ readings }: Site) => readings.map(({ circuit }) => circuit);

  it('stay with the site as long as any design has their circuit', () => {
    const kept = keepVariant(fullSite(), 'With C2');
    const without = keepVariant(removeThings(kept, [{ kind: 'loop', id: 'L3' }]), 'Without');
    expect(without.circuits.map(({ id }) => id)).not.toContain('C2');
    expect(circuitsRead(without)).toEqual(['C1', 'C2', undefined]);
    expect(reread(without)).toEqual(without);
    expect(circuitsRead(switchTo(without, 'V1', 'x'))).toEqual(['C1', 'C2', undefined]);
    expect(circuitsRead(removeVariant(without, 'V1'))).toEqual(['C1', undefined]);
    expect(reread(removeVariant(without, 'V1')).variants).toHaveLength(1);
  });

  it('of a circuit that no design has any more go with it, also where a kept design is put back', () => {
    const without = keepVariant(removeThings(fullSite(), [{ kind: 'loop', id: 'L3' }]), 'Without');
    // the circuit stands in the present design alone, and was read
    const drawnAgain = { ...fullSite(), variants: without.variants, variant: 'V1' };
    expect(circuitsRead(drawnAgain)).toContain('C2');
    const back = restoreVariant(drawnAgain, 'V1');
    expect(circuitsRead(back)).toEqual(['C1', undefined]);
    expect(reread(back)).toEqual(back);
  });

  it('of circuits that it does not have are no part of a design to be assessed', () => {
    const kept = keepVariant(removeThings(fullSite(), [{ kind: 'loop', id: 'L3' }]), 'Without');
    const both = { ...fullSite(), variants: kept.variants };
    expect(circuitsRead(designSite(both, 'V1')!)).toEqual(['C1', undefined]);
  });
});

describe('a variant as a site', () => {
  it('is the site with its design, the same object until either changes', () => {
    const site = inHand();
    expect(designSite(site, null)).toBe(site);
    expect(designSite(site, 'V9')).toBeNull();
    const first = designSite(site, 'V1')!;
    expect([turns(first), first.name]).toEqual([3, 'Tannery Yard']);
    expect(first).not.toHaveProperty('variants');
    expect(designSite(updateLoop(site, 'L1', { turns: 6 }), 'V1')).toBe(first);
    expect(designSite(updateSite(site, { name: 'Elsewhere' }), 'V1')?.name).toBe('Elsewhere');
    expect(designSite(keepOver(site, 'V1'), 'V1')).not.toBe(first);
  });

  it('has what belongs to the site as it is now, each part of it', () => {
    const site = inHand();
    const shared = Object.keys(schema.shape).filter(
      (key) =>
        !(DESIGN_FIELDS as readonly string[]).includes(key) &&
        !['format', 'version', 'variant', 'variants', 'readings'].includes(key)
    ) as (keyof Site)[];
    for (const key of shared) {
      const before = designSite(site, 'V1')!;
      const changed = { ...site, [key]: { changed: true } } as unknown as Site;
      expect([key, designSite(changed, 'V1')![key]]).toEqual([key, { changed: true }]);
      expect([key, designSite(site, 'V1')![key]]).toEqual([key, before[key]]);
    }
  });

  it('is left out of what the calculation gets', () => {
    const site = inHand();
    expect(withoutVariants(site)).not.toHaveProperty('variants');
    expect(withoutVariants(site)).toBe(withoutVariants(site));
    expect(withoutVariants(site).loops).toBe(site.loops);
    const plain = emptySite();
    expect(withoutVariants(plain)).toBe(plain);
  });
});
