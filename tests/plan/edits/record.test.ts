import { describe, expect, it } from 'vitest';
import { demoSite } from '#plan/demo';
import { removeThings } from '#plan/edits/remove';
import { acceptanceOf, acceptCircuit, remarkOnCircuit, updateRecord } from '#plan/edits/record';
import { renameCircuit, renameLoop } from '#plan/edits/rename';
import { addReading } from '#plan/edits/readings';
import { recordPaperOf } from '#plan/catalogue/record-paper';

const site = demoSite();
const [first, second] = site.circuits as [(typeof site.circuits)[number], (typeof site.circuits)[number]];

describe('the record', () => {
  it('takes names, and is left out again when it says nothing', () => {
    const named = updateRecord(site, { testedBy: 'R. Marten' });
    expect(named.fieldCheck?.record).toEqual({ testedBy: 'R. Marten' });
    expect(updateRecord(named, { testedBy: 'R. Marten' })).toBe(named);
    expect(updateRecord(named, { testedBy: undefined }).fieldCheck).toEqual({});
  });

  it('refuses what a document may not hold', () => {
    expect(updateRecord(site, { testedBy: 'x'.repeat(201) })).toBe(site);
    expect(updateRecord(site, { paper: 'B5' as 'A4' })).toBe(site);
  });

  it('accepts circuits, one entry each, with remarks only beside a verdict', () => {
    expect(remarkOnCircuit(site, first.id, 'Lid loose.')).toBe(site);
    const one = acceptCircuit(site, first.id, 'conditional');
    const two = remarkOnCircuit(acceptCircuit(one, second.id, 'refused'), first.id, 'Lid loose.');
    expect(two.fieldCheck?.record?.circuits).toEqual([
      { circuit: first.id, verdict: 'conditional', remarks: 'Lid loose.' },
      { circuit: second.id, verdict: 'refused' }
    ]);
    const changed = acceptCircuit(two, first.id, 'accepted');
    expect(acceptanceOf(changed, first.id)).toEqual({
      circuit: first.id,
      verdict: 'accepted',
      remarks: 'Lid loose.'
    });
    expect(remarkOnCircuit(changed, first.id, '').fieldCheck?.record?.circuits?.[0]).not.toHaveProperty(
      'remarks'
    );
    const open = acceptCircuit(acceptCircuit(changed, first.id, null), second.id, null);
    expect(open.fieldCheck?.record).toBeUndefined();
    expect(acceptCircuit(site, 'nobody', 'accepted')).toBe(site);
    expect(acceptCircuit(site, first.id, null)).toBe(site);
  });

  it('follows a circuit to its new id, and goes with it', () => {
    const accepted = acceptCircuit(acceptCircuit(site, first.id, 'accepted'), second.id, 'refused');
    const renamed = renameCircuit(accepted, first.id, 'K9');
    expect(acceptanceOf(renamed, 'K9')?.verdict).toBe('accepted');
    expect(acceptanceOf(renamed, first.id)).toBeUndefined();
    const loops = first.strings.flat().map(({ loop }) => ({ kind: 'loop' as const, id: loop }));
    const left = removeThings(accepted, loops);
    expect(left.circuits.some(({ id }) => id === first.id)).toBe(false);
    expect(left.fieldCheck?.record?.circuits).toEqual([{ circuit: second.id, verdict: 'refused' }]);
  });

  it('readings follow a loop to its new id', () => {
    const loop = first.strings[0]![0]!.loop;
    const read = addReading(site, { circuit: first.id, loop, testPoint: 'loop', resistanceDc_ohm: 0.3 });
    expect(renameLoop(read, loop, 'L99').readings[0]?.loop).toBe('L99');
  });

  it('lies on A4, or on letter where feet are shown, unless it says otherwise', () => {
    expect(recordPaperOf(site)).toEqual({ paper: 'A4', orientation: 'portrait' });
    expect(recordPaperOf({ ...site, displayUnits: 'imperial' }).paper).toBe('letter');
    const stated = updateRecord(site, { paper: 'tabloid', orientation: 'landscape' });
    expect(recordPaperOf(stated)).toEqual({ paper: 'tabloid', orientation: 'landscape' });
    // the sheet's own paper is another matter
    expect(recordPaperOf({ ...site, sheet: { paper: 'A3' } } as typeof site).paper).toBe('A4');
  });
});
