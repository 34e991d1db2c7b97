/** Readings of a circuit that only a kept variant has: nobody stumbles over them, and they come back with the variant. */
import { expect, test } from 'vitest';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import { measuredTables } from '#exchange/tables/measured';
import { keepVariant, removeThings, switchTo } from '#plan/edits/index';
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';

const answer = createAnswerer();
const base = demoSite();
const [gone, stays] = base.circuits;

function without(): Site {
  const readings = [gone!.id, stays!.id].map((circuit) => ({
    circuit,
    testPoint: 'cabinet' as const,
    at: '2026-05-04',
    resistanceDc_ohm: 1
  }));
  const kept = keepVariant({ ...base, readings }, 'With it');
  const loops = gone!.strings.flat().map(({ loop }) => ({ kind: 'loop' as const, id: loop }));
  return keepVariant(removeThings(kept, loops), 'Without it');
}

test('are no matter of a design without the circuit', () => {
  const site = without();
  expect(site.circuits.map(({ id }) => id)).not.toContain(gone!.id);
  expect(site.readings).toHaveLength(2);
  const checked = finish(answer('check-readings', site, {}));
  const figures = checked.flatMap(({ circuit, measured }) => measured.map(() => circuit));
  expect(figures).toEqual([stays!.id]);
  expect(measuredTables(site, checked)[0]?.rows).toHaveLength(1);
  const visits = finish(answer('evaluate-readings', site, {}));
  expect(new Set(visits.map(({ circuit }) => circuit))).toEqual(new Set([stays!.id]));
});

test('are there again with the variant', () => {
  const checked = finish(answer('check-readings', switchTo(without(), 'V1', 'x'), {}));
  const circuits = checked.filter(({ measured }) => measured.length > 0).map(({ circuit }) => circuit);
  expect(circuits).toEqual([gone!.id, stays!.id]);
});
