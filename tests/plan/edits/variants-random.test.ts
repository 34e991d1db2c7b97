/** Whatever is kept, switched to, drawn and taken away: no switch loses a design, and the document always reads as it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Design, Site } from '#plan/schema';
import { designOf, holdsPresent, isKept, variantOf, variantsOf } from '#plan/variants';
import { fullSite } from './site';

const SEED = 161_803;

const id = fc.constantFrom('V1', 'V1', 'V1', 'V2', 'V2', 'V3', 'none');
const name = fc.constantFrom('a', 'b', 'c', '=1+1', '  ', 'x'.repeat(201));

type Step = { readonly is: 'switch' | 'other'; readonly edit: (site: Site) => Site };
const other = (edit: Step['edit']): Step => ({ is: 'other', edit });
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(id, name).map(([to, called]): Step => ({
      is: 'switch',
      edit: (site) => edits.switchTo(site, to, called)
    }))
  },
  name.map((called) => other((site) => edits.keepVariant(site, called))),
  id.map((at) => other((site) => edits.keepOver(site, at))),
  id.map((at) => other((site) => edits.restoreVariant(site, at))),
  id.map((at) => other((site) => edits.removeVariant(site, at))),
  fc.tuple(id, name, name).map(([at, called, before]): Step => ({
    is: 'switch',
    edit: (site) => edits.branchFrom(site, at, called, before)
  })),
  fc
    .tuple(id, name)
    .map(([at, called]) =>
      other((site) => edits.noteVariant(edits.renameVariant(site, at, called), at, called))
    ),
  fc.integer({ min: 1, max: 9 }).map((turns) => other((site) => edits.updateLoop(site, 'L1', { turns }))),
  fc
    .constantFrom('L1', 'L2', 'L3', 'L4')
    .map((loop) => other((site) => edits.removeThings(site, [{ kind: 'loop', id: loop }]))),
  fc.constantFrom('frost', undefined).map((notes) => other((site) => edits.updateSite(site, { notes })))
);

const isHeld = (site: Site, design: Design): boolean =>
  variantsOf(site).some((each) => holdsPresent({ ...site, ...blank, ...design }, each)) ||
  holdsPresent(site, { id: '', name: '', design });
/** So that a design without an optional field is compared without it. */
const blank = {
  notes: undefined,
  temperatureRange_C: undefined,
  traffic: undefined,
  tolerances: undefined,
  acceptedSteelCost: undefined
} as unknown as Partial<Site>;

describe('designs at random', () => {
  it('are never lost by going to another one, and every document reads as it was written', () => {
    let switches = 0;
    fc.assert(
      fc.property(fc.array(step, { minLength: 4, maxLength: 24 }), (steps) => {
        let site = edits.keepVariant(fullSite(), 'start');
        for (const { is, edit } of steps) {
          const before = site;
          site = edit(before);
          if (is === 'switch' && site !== before) {
            switches += 1;
            expect(isHeld(site, designOf(before))).toBe(true);
            // but for the variant that the present design was a working state of, all stay as they were
            for (const each of variantsOf(before))
              if (each.id !== before.variant) expect(variantOf(site, each.id)).toBe(each);
            expect(isKept(site)).toBe(true);
          }
          expect(site.variant === undefined || variantOf(site, site.variant) !== null).toBe(true);
        }
        const reading = readSite(writeSite(site));
        if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
        expect(reading.site).toEqual(site);
      }),
      { seed: SEED, numRuns: 300 }
    );
    // the property was tried, not passed by
    expect(switches).toBeGreaterThan(100);
  });
});
