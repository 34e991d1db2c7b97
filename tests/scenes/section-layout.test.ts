import { describe, expect, it } from 'vitest';
import type { SectionSteel, SlotSection } from '#analysis/section/slot-section';
import { scaleBarOf, sectionLayout } from '#scenes/section-layout';

const sectionWith = (steel: readonly SectionSteel[], cover = 0.0386): SlotSection => ({
  depth: 0.05,
  width: 0.008,
  conductor: 0.001628,
  insulated: 0.0038,
  fits: true,
  slots: [{ isShared: false, wires: [], cover, fill: 0 }],
  steel
});
const plate = (id: string, depth: number): SectionSteel => ({ id, kind: 'plate', depth, bars: null });

describe('the picture of a slot', () => {
  it('has one scale for all that lies near', () => {
    const layout = sectionLayout(sectionWith([plate('s1', 0.1)]));
    expect(layout.steel[0]).toMatchObject({ isBroken: false });
    expect(layout.steel[0]!.y - layout.surface).toBeCloseTo(0.1 * layout.scale, 9);
    expect(layout.breakAt).toBeNull();
  });

  it('puts steel that lies deep below a break, in its order', () => {
    const layout = sectionLayout(
      sectionWith([plate('near', 0.12), plate('deep', 0.4), plate('deeper', 0.9)])
    );
    expect(layout.steel.map(({ isBroken }) => isBroken)).toEqual([false, true, true]);
    expect(layout.steel[1]!.y).toBeGreaterThan(layout.breakAt!);
    expect(layout.steel[2]!.y).toBeGreaterThan(layout.steel[1]!.y);
    expect(layout.steel[2]!.y).toBeLessThan(layout.height);
  });

  it('leaves room above the road for what stands out', () => {
    const inside = sectionLayout(sectionWith([]));
    const out = sectionLayout(sectionWith([], -0.01));
    const cover = sectionLayout(sectionWith([plate('s1', -0.02)]));
    expect(out.surface - 0.01 * out.scale).toBeGreaterThanOrEqual(inside.surface - 1e-9);
    expect(cover.steel[0]!.y).toBeGreaterThan(0);
  });

  it('has a scale bar of a round length that fits', () => {
    const layout = sectionLayout(sectionWith([]));
    const bar = scaleBarOf(layout, false);
    expect([0.002, 0.005, 0.01, 0.02, 0.05, 0.1]).toContain(bar);
    expect(bar * layout.scale).toBeLessThanOrEqual(layout.width / 5);
  });
});
