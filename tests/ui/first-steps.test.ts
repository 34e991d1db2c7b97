import { expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import { firstSteps } from '#ui/plan/first-steps';

test('the first steps can be taken with what is on the plan', () => {
  const site = demoSite();
  expect(site.probes.length).toBeGreaterThan(0);
  expect(firstSteps(site)).toEqual(['hint.dragVehicle', 'hint.dragCorner', 'hint.typeSize']);
  expect(firstSteps({ ...site, probes: [] })[0]).toBe('hint.placeVehicle');
  expect(firstSteps({ ...site, loops: [], probes: [] })).toEqual([
    'hint.drawLoop',
    'hint.placeVehicle',
    'hint.typeSize'
  ]);
});
