import { describe, expect, it } from 'vitest';
import { setHandling, setLayer, showAll, unlockAll, type Thing } from '#plan/edits/index';
import { isHidden, isLocked, visibleSite } from '#plan/layers';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { fullSite } from './site';

const L1: Thing = { kind: 'loop', id: 'L1' };
const LANE: Thing = { kind: 'lane', id: 'lane1' };
const CAR: Thing = { kind: 'probe', id: '1' };

const withPicture = (): Site => ({
  ...fullSite(),
  underlays: [
    {
      id: 'p1',
      name: '',
      picture: null,
      at: [0, 0],
      metresPerPixel: 1,
      rotation: 0,
      opacity: 1,
      locked: true
    }
  ]
});

describe('locks', () => {
  it('are on the thing, and taken off leave its bytes as they were', () => {
    const site = fullSite();
    const locked = setHandling(site, [L1, LANE, CAR], 'locked', true);
    expect([L1, LANE, CAR].map((thing) => isLocked(locked, thing))).toEqual([true, true, true]);
    expect(isLocked(locked, { kind: 'loop', id: 'L2' })).toBe(false);
    expect(setHandling(locked, [L1], 'locked', true)).toBe(locked);
    expect(writeSite(setHandling(locked, [L1, LANE, CAR], 'locked', false))).toBe(writeSite(site));
  });

  it('of a layer hold all that lies on it, but no vehicle', () => {
    const site = setLayer(fullSite(), 'lanes', 'locked', true);
    expect([LANE, { kind: 'mark', id: 'm1' } as const].every((thing) => isLocked(site, thing))).toBe(true);
    expect([L1, CAR].some((thing) => isLocked(site, thing))).toBe(false);
    expect(writeSite(setLayer(site, 'lanes', 'locked', false))).toBe(writeSite(fullSite()));
  });

  it('all come off at once, apart from those of pictures', () => {
    const site = setLayer(setHandling(withPicture(), [L1], 'locked', true), 'loops', 'locked', true);
    const free = unlockAll(site);
    expect(isLocked(free, L1)).toBe(false);
    expect(isLocked(free, { kind: 'underlay', id: 'p1' })).toBe(true);
    expect(unlockAll(free)).toBe(free);
  });

  it('of a picture are said in so many words, on or off', () => {
    const free = setHandling(withPicture(), [{ kind: 'underlay', id: 'p1' }], 'locked', false);
    expect(free.underlays[0]?.locked).toBe(false);
    const read = readSite(writeSite(free));
    expect(read.ok && read.site.underlays[0]?.locked).toBe(false);
  });
});

describe('what is hidden', () => {
  it('is not among what is to be drawn, and still in the document', () => {
    const site = setHandling(fullSite(), [L1, CAR], 'hidden', true);
    const seen = visibleSite(site);
    expect(seen.loops.map(({ id }) => id)).toEqual(['L2', 'L3', 'L4']);
    expect(seen.probes.map(({ vehicle }) => vehicle)).toEqual(['own']);
    expect(seen.lanes).toBe(site.lanes);
    expect(site.loops).toHaveLength(4);
    expect(isHidden(site, L1)).toBe(true);
  });

  it('goes by layers too, and by the layers of the day', () => {
    const site = fullSite();
    expect(visibleSite(site)).toBe(site);
    const hidden = setLayer(site, 'loops', 'hidden', true);
    expect(visibleSite(hidden).loops).toEqual([]);
    expect(visibleSite(setLayer(hidden, 'loops', 'hidden', false)).loops).toBe(site.loops);
  });

  it('keeps one list for as long as nothing of it changes, so that it need not be drawn again', () => {
    const site = setHandling(fullSite(), [L1], 'hidden', true);
    const moved = { ...site, probes: [...site.probes] };
    expect(visibleSite(moved).loops).toBe(visibleSite(site).loops);
  });

  it('all comes back at once', () => {
    const site = setLayer(setHandling(fullSite(), [L1, CAR], 'hidden', true), 'notes', 'hidden', true);
    expect(writeSite(showAll(site))).toBe(writeSite(fullSite()));
  });
});
