import { expect, test } from 'vitest';
import { expectedInSteps } from '#analysis/fault-finding/expected';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { demoSite } from '#plan/demo';
import { updateFieldCheck } from '#plan/edits/readings';
import type { Site } from '#plan/schema';

const demo = demoSite();
const means = createMeans();

const limits = (site: Site): readonly string[] =>
  finish(expectedInSteps(site, demo.circuits[0]!.id, {}, means))[0]!
    .figures.filter(({ testPoint, quantity }) => testPoint === 'cabinet' && quantity === 'insulation_ohm')
    .flatMap((figure) => figure.limits.map(({ id }) => id));

test('limits are those of the site as it is now, also where the circuit’s figures are known already', () => {
  expect(limits(demo)).toEqual(['wac-296-46b-300-insulation']);
  expect(limits(updateFieldCheck(demo, { limits: ['california-86-insulation'] }))).toEqual([
    'california-86-insulation'
  ]);
  expect(limits(updateFieldCheck(demo, { insulationLimit_ohm: 2e8 }))).toEqual([
    'wac-296-46b-300-insulation',
    'own'
  ]);
});
