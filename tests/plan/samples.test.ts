import { describe, expect, it } from 'vitest';
import { writeSite } from '#plan/read';
import { samples } from './samples';

const named = (part: string) => samples.find(({ name }) => name.includes(part))!.site;
const kinds = (part: string) => named(part).loops.map(({ shape }) => shape.kind);

describe('samples', () => {
  it('are all there', () => {
    expect(samples.map(({ name }) => name.replace('.kerfline.json', ''))).toEqual([
      'advance-loops',
      'bicycle-stop-line',
      'calls-that-miscount',
      'car-park-counting-pair',
      'check-after-four-winters',
      'driveway-gate',
      'exit-lanes-that-beat',
      'loading-bay-on-steel',
      'stop-line-two-lanes',
      'two-ways-to-guard-a-gate'
    ]);
  });

  it.each(samples)('$name stands in the form in which the program writes it', ({ text, site }) => {
    expect(writeSite(site)).toBe(text);
  });

  it.each(samples)('$name shows a vehicle, cautions and the way to the cabinet', ({ site }) => {
    expect(site.probes.length).toBeGreaterThan(0);
    const marks = site.marks.map(({ kind }) => kind);
    expect(marks).toEqual(expect.arrayContaining(['note', 'pull-box', 'cabinet', 'conduit']));
    expect(site.notes).toMatch(/local rules/);
  });

  it('have the gate with a free exit and two protecting loops in series, and say that a loop is not enough', () => {
    const gate = named('driveway-gate');
    expect(gate.circuits.map(({ strings }) => strings[0]?.length)).toEqual([1, 2]);
    expect(gate.notes).toMatch(/never the only safety device/);
  });

  it('have a loading bay over a mat, with a wire, a cable from its geometry, cables in a row and drawn ways', () => {
    const bay = named('loading-bay');
    expect(bay.steel.map(({ kind }) => kind)).toEqual(['mat']);
    expect(bay.loops.every(({ wire, tail }) => wire === 'w1' && tail.route?.to === 'm4')).toBe(true);
    expect(bay.cables[0]?.resistancePerMetre_ohm).toBeUndefined();
    expect(bay.circuits.every(({ leadIn }) => leadIn.further?.length === 1 && leadIn.route)).toBe(true);
    expect(bay.notes).toMatch(/never the only safety device/);
  });

  it('have a bicycle lane with a diagonal beside a quadrupole', () => {
    expect(kinds('bicycle')).toEqual(['quadrupole', 'diagonal']);
  });

  it('have advance loops about 5.5 s and 2.5 s before the line at 55 mph: 445 ft and 200 ft, NCHRP 812 exhibit 4-7', () => {
    const places = named('advance').loops.map(({ shape }) =>
      'centre' in shape ? -shape.centre[1] / 0.3048 : 0
    );
    for (const feet of places) expect(Math.min(Math.abs(feet - 445), Math.abs(feet - 200))).toBeLessThan(5);
  });

  it('have presence loops next to each other, the first 2 ft behind the line: South Bend 6-6', () => {
    const fronts = named('stop-line-two').loops.flatMap(({ shape }) =>
      shape.kind === 'rectangle' && shape.centre[1] > -3
        ? [-(shape.centre[1] + shape.length / 2) / 0.3048]
        : []
    );
    expect(fronts).toHaveLength(2);
    for (const feet of fronts) expect(feet).toBeCloseTo(2, 1);
  });
});
