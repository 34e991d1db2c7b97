import { describe, expect, it } from 'vitest';
import type { Circuit } from '#plan/schema';
import { dropsOf, nearestDrop } from '#ui/wiring/drops';
import { schematicOf, type Box } from '#scenes/schematic';

/** Every way to write a number as a sum in which order counts: the lengths of the strings. */
function compositions(total: number): number[][] {
  if (total === 0) return [[]];
  return Array.from({ length: total }, (_, index) => index + 1).flatMap((first) =>
    compositions(total - first).map((rest) => [first, ...rest])
  );
}

const stringsOf = (lengths: readonly number[]): Circuit['strings'] =>
  lengths.map((length, row) =>
    Array.from({ length }, (_, place) => ({ loop: `L${row}.${place}`, reversed: (row + place) % 2 === 1 }))
  );

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const ALL = [1, 2, 3, 4, 5, 6, 7, 8].flatMap(compositions);

describe('the diagram of a circuit', () => {
  it.each([280, 340, 500])(
    'has nothing on top of anything else in %d pixels, up to eight loops however wired',
    (width) => {
      for (const lengths of ALL) {
        const drawing = schematicOf(stringsOf(lengths), 3, width);
        const boxes = [
          ...drawing.coils,
          ...drawing.sections,
          drawing.pullBox,
          ...(drawing.out ? [drawing.out] : [])
        ];
        boxes.forEach((box, index) => {
          expect(box.x >= 0 && box.y >= 0 && box.x + box.width <= drawing.width, lengths.join('+')).toBe(
            true
          );
          expect(box.y + box.height <= drawing.height, lengths.join('+')).toBe(true);
          for (const other of boxes.slice(index + 1))
            expect(overlap(box, other), lengths.join('+')).toBe(false);
        });
      }
    }
  );

  it('leads current from one terminal through every coil of a string once and back to the other', () => {
    for (const lengths of ALL) {
      const { coils, wires, goRail, returnRail, terminals } = schematicOf(stringsOf(lengths), 1, 340);
      expect(goRail[0]).toEqual(terminals[0]);
      expect(returnRail[0]).toEqual(terminals[1]);
      lengths.forEach((length, row) => {
        const own = coils.filter(({ string }) => string === row);
        const down = wires.filter(([{ x }]) => x === own[0]!.wire);
        expect(down).toHaveLength(length + 1);
        expect(down[0]![0].y).toBe(goRail.at(-1)!.y);
        expect(down.at(-1)![1].y).toBe(returnRail.at(-1)!.y);
        own.forEach((coil, index) => {
          expect(down[index]![1].y).toBe(coil.from);
          expect(down[index + 1]![0].y).toBe(coil.to);
        });
      });
    }
  });

  it('marks the start of a winding above, and below where the loop is reversed', () => {
    const { coils } = schematicOf(stringsOf([2]), 1, 340);
    expect(coils.map(({ dot, from, to }) => dot.y < (from + to) / 2)).toEqual([true, false]);
  });
});

describe('the places to drop a coil', () => {
  const circuit = { id: 'C1', strings: stringsOf([2, 1]) } as Circuit;
  const drawing = schematicOf(circuit.strings, 1, 340);
  const drops = dropsOf(drawing, circuit);

  it('are before, between and after the coils, beside the strings, and outside', () => {
    expect(drops.map(({ place }) => place)).toEqual([
      { kind: 'before', loop: 'L0.0' },
      { kind: 'after', loop: 'L0.0' },
      { kind: 'after', loop: 'L0.1' },
      { kind: 'before', loop: 'L1.0' },
      { kind: 'after', loop: 'L1.0' },
      { kind: 'string', circuit: 'C1', at: 0 },
      { kind: 'string', circuit: 'C1', at: 1 },
      { kind: 'string', circuit: 'C1', at: 2 },
      { kind: 'circuit' }
    ]);
  });

  it('are found by the nearest line', () => {
    const [first, second] = drawing.coils;
    const between = { x: first!.x + 60, y: second!.y + 2 };
    expect(nearestDrop(drops, between)?.place).toEqual({ kind: 'after', loop: 'L0.0' });
    const beside = { x: drawing.columns[1]! + 1, y: first!.y + first!.height / 2 };
    expect(nearestDrop(drops, beside)?.place).toEqual({ kind: 'string', circuit: 'C1', at: 1 });
    const outside = { x: 200, y: drawing.height - 4 };
    expect(nearestDrop(drops, outside)?.place).toEqual({ kind: 'circuit' });
    expect(nearestDrop([], outside)).toBeNull();
  });

  it('do not offer to take out the only loop', () => {
    const single = { id: 'C1', strings: stringsOf([1]) } as Circuit;
    const places = dropsOf(schematicOf(single.strings, 1, 340), single).map(({ place }) => place.kind);
    expect(places).not.toContain('circuit');
  });
});
