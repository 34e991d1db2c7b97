import { describe, expect, it } from 'vitest';
import { steelOf, underlayOf } from '#editor/things';
import type { Ref } from '#editor/types';
import { updateSteel, updateUnderlay } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Site, Steel } from '#plan/schema';
import { changedSeveral } from '#ui/details/change-several';

const OUTLINE: Steel['outline'] = [[0, 0], [4, 0], [4, 4], [0, 4]]; // prettier-ignore

/** A plate has no bars, so it cannot take a pitch; the last mat is locked. */
const site: Site = {
  ...emptySite(),
  steel: [
    { id: 's1', kind: 'mat', depth: 0.1, pitch: 0.15, barRadius: 0.006, outline: OUTLINE },
    { id: 's2', kind: 'plate', depth: 0.1, outline: OUTLINE },
    { id: 's3', kind: 'mat', depth: 0.1, pitch: 0.3, barRadius: 0.006, outline: OUTLINE, locked: true }
  ]
};
const refs: readonly Ref[] = site.steel.map(({ id }) => ({ kind: 'steel', id }));

const pitchOf = (from: Site, { id }: Ref): number | undefined => {
  const steel = steelOf(from, id);
  return steel?.kind === 'mat' ? steel.pitch : undefined;
};
const withPitch = (pitch: number, of: readonly Ref[] = refs) =>
  changedSeveral<number | undefined>(site, {
    refs: of,
    value: pitch,
    valueOf: pitchOf,
    edit: (before, { id }) => updateSteel(before, id, { pitch })
  });

describe('one value for several things', () => {
  it('goes to all that can take it, and the rest is counted', () => {
    const { site: next, without } = withPitch(0.2);
    expect(refs.map((ref) => pitchOf(next, ref))).toEqual([0.2, undefined, 0.3]);
    expect(without).toBe(2);
  });

  it('counts what has it already as having it', () => {
    expect(withPitch(0.3).without).toBe(1);
  });

  it('goes to a locked one too if its lock keeps something else', () => {
    const underlay = { name: '', picture: null, at: [0, 0], metresPerPixel: 0.01, rotation: 0 } as const;
    const pictures: Site = {
      ...emptySite(),
      underlays: [
        { ...underlay, id: 'b1', opacity: 0.5, locked: false },
        { ...underlay, id: 'b2', opacity: 0.6, locked: true }
      ]
    };
    const ofAll = (isKeptByLock: boolean) =>
      changedSeveral<number | undefined>(pictures, {
        refs: pictures.underlays.map(({ id }) => ({ kind: 'underlay', id })),
        value: 0.3,
        isKeptByLock,
        valueOf: (from, { id }) => underlayOf(from, id)?.opacity,
        edit: (before, { id }) => updateUnderlay(before, id, { opacity: 0.3 })
      });
    expect(ofAll(false).site.underlays.map(({ opacity }) => opacity)).toEqual([0.3, 0.3]);
    expect(ofAll(true).site.underlays.map(({ opacity }) => opacity)).toEqual([0.3, 0.6]);
    expect([ofAll(false).without, ofAll(true).without]).toEqual([0, 1]);
  });

  it('leaves the same site when nothing takes it', () => {
    const { site: next, without } = withPitch(99, refs.slice(0, 1));
    expect(next).toBe(site);
    expect(without).toBe(1);
  });
});
