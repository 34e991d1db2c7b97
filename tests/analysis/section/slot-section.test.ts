import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windingOf } from '#analysis/electrical/winding-of';
import { slotSection } from '#analysis/section/slot-section';
import { wireOf } from '#plan/catalogue/wires';
import { emptySite } from '#plan/read';
import { loop as loopSchema, type Loop, type Site } from '#plan/schema';

const loopWith = (patch: object): Loop =>
  loopSchema.parse({
    id: 'L1',
    turns: 3,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008 },
    shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8 },
    ...patch
  });

const site: Site = emptySite();
const shape = fc.constantFrom(
  { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 2.4, cornerCut: 0.2 },
  { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 4 },
  { kind: 'diagonal', centre: [0, 0], width: 1.8, length: 1.8 },
  { kind: 'circle', centre: [0, 0], diameter: 1.8 }
);
const loops = fc
  .record({
    turns: fc.integer({ min: 1, max: 8 }),
    wire: fc.constantFrom('awg12', 'awg14', 'awg16', 'awg18', 'mm2-1.5', 'mm2-2.5'),
    depth: fc.integer({ min: 20, max: 90 }),
    width: fc.integer({ min: 5, max: 12 }),
    shape
  })
  .map(({ depth, width, ...rest }) =>
    loopWith({ ...rest, slot: { depth: depth / 1e3, width: width / 1e3 } })
  );

describe('the cross-section of a slot', () => {
  it('stacks touching wires from the bottom up, where the electrical model has them', () => {
    fc.assert(
      fc.property(loops, (loop) => {
        const section = slotSection(loop, site)!;
        const wire = wireOf(loop.wire, site)!;
        const modelled = windingOf(loop, {
          conductor: wire.conductorDiameter,
          insulated: wire.insulatedDiameter
        });
        const heights = [...new Set(modelled.runs.flatMap((run) => run.heights.map((z) => z.toFixed(9))))];
        const drawn = section.slots.flatMap(({ wires }) => wires.map(({ z }) => z.toFixed(9)));
        expect(new Set(drawn)).toEqual(new Set(heights));
        for (const { wires } of section.slots) {
          expect(wires[0]!.z - section.insulated / 2).toBeCloseTo(-loop.slot.depth, 12);
          for (const [at, { z }] of wires.slice(1).entries())
            expect(z - wires[at]!.z).toBeCloseTo(section.insulated, 12);
        }
      }),
      { seed: 8_128, numRuns: 100 }
    );
  });

  it('keeps every wire inside the slot exactly where cover is left', () => {
    fc.assert(
      fc.property(loops, (loop) => {
        for (const { wires, cover } of slotSection(loop, site)!.slots) {
          const top = wires.at(-1)!.z + slotSection(loop, site)!.insulated / 2;
          expect(-top).toBeCloseTo(cover, 12);
          expect(top <= 1e-12).toBe(cover >= -1e-12);
        }
      }),
      { seed: 496, numRuns: 100 }
    );
  });

  it('shows the shared slot of a quadrupole with both cells’ wires in turn', () => {
    const section = slotSection(
      loopWith({ turns: 2, shape: { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 4 } }),
      site
    )!;
    expect(section.slots.map(({ isShared }) => isShared)).toEqual([false, true]);
    expect(section.slots[1]!.wires.map(({ cell }) => cell)).toEqual([0, 1, 0, 1]);
  });

  it('counts the sealant by hand', () => {
    // 8 mm × 50 mm less three wires of 3.8 mm: 400 − 3·11.341 = 365.98 mm²
    expect(slotSection(loopWith({}), site)!.slots[0]!.fill * 1e6).toBeCloseTo(365.98, 2);
  });

  it('shows the steel below, the uppermost first, and not the steel elsewhere', () => {
    const box = (x: number) => [[x - 2, -2], [x + 2, -2], [x + 2, 2], [x - 2, 2]] as const; // prettier-ignore
    const steel: Site['steel'] = [
      { id: 'deep', kind: 'plate', depth: 0.6, outline: box(0) },
      { id: 'mat', kind: 'mat', depth: 0.12, pitch: 0.2, barRadius: 0.006, outline: box(0) },
      { id: 'away', kind: 'plate', depth: 0.2, outline: box(9) },
      { id: 'abyss', kind: 'plate', depth: 3, outline: box(0) }
    ];
    const section = slotSection(loopWith({}), { ...site, steel })!;
    expect(section.steel.map(({ id }) => id)).toEqual(['mat', 'deep']);
    expect(section.steel[0]!.bars).toEqual({ pitch: 0.2, radius: 0.006 });
  });

  it('has nothing to show for an unknown wire', () => {
    expect(slotSection(loopWith({ wire: 'string' }), site)).toBeNull();
  });
});
