/** What may hurt where a meter is held: stated with every step that asks for a reading. */
import { expect, test } from 'vitest';
import { PATHS } from '#analysis/walk-through/paths/index';
import { COMPLAINTS } from '#analysis/walk-through/results';

const readings = COMPLAINTS.flatMap((complaint) =>
  Object.entries(PATHS[complaint].nodes).flatMap(([id, node]) =>
    'question' in node && node.measure
      ? [{ what: `${complaint}: ${id}`, hazards: node.hazards ?? [], ...node.measure }]
      : []
  )
);

test.each(readings)('$what', ({ hazards, testPoint, quantity }) => {
  const isInside = testPoint === 'cabinet' || testPoint === 'unit';
  expect(hazards).toContain(isInside ? 'mains' : 'traffic');
  if (quantity.startsWith('insulation')) expect(hazards).toContain('insulation tester');
  if (quantity === 'insulationBetween_ohm') expect(hazards).toContain('traffic');
});
