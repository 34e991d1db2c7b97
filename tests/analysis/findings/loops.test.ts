/** Findings about loops: one drawing that raises each, and one that does not. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Finding } from '#analysis/results';
import type { Site } from '#plan/schema';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const findingsOf = (site: Site): readonly Finding[] => createAssessor().assess(site, 'prepared').findings;
const about = (
  code: string,
  over: Json,
  shape: Json = square(0, 0),
  fields: Json = {}
): Finding | undefined =>
  findingsOf(
    siteOf({
      loops: [loop('L1', shape, { name: 'Gate', ...over })],
      circuits: [circuit('C1', ['L1'])],
      units: [unit('U1')],
      ...fields
    })
  ).find((finding) => finding.code === code);

describe('cover over the wires', () => {
  it('of 18.6 mm is too little: 30 mm less three turns of 3.8 mm', () => {
    const found = about('cover', { slot: { depth: 0.03, width: 0.008 } });
    expect(found).toMatchObject({ severity: 'caution', subject: 'L1', selects: ['L1'] });
    expect(found!.message).toContain('18.6 mm of cover');
    expect(found!.message).toContain('Gate');
    // 25.4 mm over 11.4 mm of wire
    expect(found!.advice).toContain('36.8 mm deep');
  });

  it('of less than nothing is a problem: the wires stand 1.4 mm out of a slot of 10 mm', () => {
    const found = about('cover', { slot: { depth: 0.01, width: 0.008 } });
    expect(found).toMatchObject({ severity: 'problem' });
    expect(found!.message).toContain('1.4 mm out of a slot 10 mm deep');
  });

  it('counts both halves in a middle slot: four turns of wire in a quadrupole of two', () => {
    const shape = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3 };
    const over = { turns: 2, slot: { depth: 0.04, width: 0.008 } };
    expect(about('cover', over, shape)!.message).toContain('24.8 mm of cover');
    expect(about('cover', over)).toBeUndefined();
  });

  it('of 25.4 mm or more is enough', () => {
    expect(about('cover', { slot: { depth: 0.0369, width: 0.008 } })).toBeUndefined();
    expect(about('cover', { slot: { depth: 0.0367, width: 0.008 } })).toBeDefined();
  });

  it('is told in inches where the drawing is', () => {
    const found = about('cover', { slot: { depth: 0.03, width: 0.008 } }, square(0, 0), {
      displayUnits: 'imperial'
    });
    expect(found!.message).toMatch(/0\.73\d? in of cover/);
  });
});

describe('a wire in its slot', () => {
  it('that is thicker than the slot is wide does not go in: 4.3 mm and 4 mm', () => {
    const found = about('slot-width', { wire: 'awg12', slot: { depth: 0.05, width: 0.004 } });
    expect(found).toMatchObject({ severity: 'problem', subject: 'L1' });
    expect(found!.message).toContain('4.3 mm thick');
    expect(found!.message).toContain('4 mm wide');
  });

  it('that just fits does', () => {
    expect(about('slot-width', { wire: 'awg12', slot: { depth: 0.05, width: 0.0043 } })).toBeUndefined();
  });
});

describe('turns', () => {
  it('are few for a small loop: one turn of 6 × 6 ft has 10.5 µH (filament sums), three make 50', () => {
    const found = about('turns', { turns: 1 }, square(0, 0, 1.8288));
    expect(found).toMatchObject({ severity: 'caution', subject: 'L1' });
    expect(found!.message).toMatch(/^1 turn is unusually few for Gate/);
    expect(found!.message).toMatch(/10\.[45]\d? µH/);
    // √(50/10.5) = 2.2
    expect(found!.advice).toContain('About 3 ');
  });

  it('are many for a long one: about 4.2 mH with 8 turns on 6 × 50 ft, where 3 make 700 µH', () => {
    const shape = { kind: 'rectangle', centre: [0, 0], width: 1.8288, length: 15.24 };
    const found = about('turns', { turns: 8 }, shape);
    expect(found!.message).toMatch(/^8 turns are unusually many/);
    // two turns have 188.9 µH (filament sums): between N² and N^1.8 of it
    const stated = Number(/([\d.]+) µH/.exec(found!.message)![1]);
    expect(stated).toBeGreaterThan(188.9 * 4 ** 1.8);
    expect(stated).toBeLessThan(188.9 * 16);
    const few = Math.floor(8 * Math.sqrt(700 / stated));
    expect(found!.advice).toContain(`About ${few} `);
  });

  it('are usual where they give 76.9 µH: three on 6 × 6 ft', () => {
    expect(about('turns', { turns: 3 }, square(0, 0, 1.8288))).toBeUndefined();
  });
});

describe('corner cuts', () => {
  const cut = (cornerCut: number): Json => ({ ...square(0, 0), cornerCut });

  it('that leave 0.5 m of 1.8 m straight are large', () => {
    const found = about('corner-cut', {}, cut(0.65));
    expect(found).toMatchObject({ severity: 'caution', subject: 'L1' });
    expect(found!.message).toContain('0.65 m');
    expect(found!.message).toContain('0.50 m');
    expect(found!.message).toContain('1.80 m');
  });

  it('of a sixth of the side are usual, and none are none', () => {
    expect(about('corner-cut', {}, cut(0.3))).toBeUndefined();
    expect(about('corner-cut', {}, cut(0))).toBeUndefined();
    expect(about('corner-cut', {}, cut(0.6))).toBeUndefined();
  });
});

describe('a shape that cannot be', () => {
  const site = siteOf({
    loops: [loop('L1', square(0, 0)), loop('L2', square(4, 0))],
    circuits: [],
    units: []
  });
  const withShape = (shape: Site['loops'][number]['shape']): Site => ({
    ...site,
    loops: [{ ...site.loops[0]!, shape }, site.loops[1]!]
  });
  const impossible = withShape({
    kind: 'rectangle',
    centre: [0, 0],
    width: 1.8,
    length: 1.8,
    rotation: 0,
    cornerCut: 1
  });

  it('is named, and the rest of the drawing is worked out all the same', () => {
    const found = createAssessor().assess(impossible, 'prepared');
    const finding = found.findings.find(({ code }) => code === 'corner-cut');
    expect(finding).toMatchObject({ severity: 'problem', subject: 'L1' });
    expect(finding!.message).toContain('1 m');
    expect(found.loops.map(({ id }) => id)).toEqual(['L2']);
    const crossed = withShape({
      kind: 'polygon',
      points: [
        [0, 0],
        [1, 1],
        [1, 0],
        [0, 1]
      ]
    });
    expect(findingsOf(crossed).find(({ code }) => code === 'shape')).toMatchObject({ severity: 'problem' });
  });

  it('takes its circuit along and no other', () => {
    const wired = {
      ...impossible,
      circuits: siteOf({
        loops: [loop('L1', square(0, 0)), loop('L2', square(4, 0))],
        circuits: [circuit('C1', ['L1'], { channel: null }), circuit('C2', ['L2'], { channel: null })]
      }).circuits
    };
    expect(
      createAssessor()
        .assess(wired, 'prepared')
        .circuits.map(({ id }) => id)
    ).toEqual(['C2']);
  });

  it('is not found in a sound one', () => {
    expect(findingsOf(site).filter(({ code }) => code === 'shape' || code === 'corner-cut')).toEqual([]);
  });
});

describe('a loop in no circuit', () => {
  it('is a note; one in a circuit is not', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(4, 0))],
      circuits: [circuit('C1', ['L1'])],
      units: [unit('U1')]
    });
    const notes = findingsOf(site).filter(({ code }) => code === 'no-circuit');
    expect(notes).toEqual([expect.objectContaining({ severity: 'note', subject: 'L2' })]);
  });
});
