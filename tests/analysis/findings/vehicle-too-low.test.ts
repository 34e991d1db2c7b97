import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { PATIENCE } from '../../physics/support/arbitraries';
import { circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

const withPlate = (height: number) =>
  createAssessor().assess(
    siteOf({
      lanes: [lane('a', 0)],
      loops: [loop('L1', square(0, 0))],
      circuits: [circuit('C1', ['L1'], { detect: ['barge'] })],
      units: [unit('U1')],
      vehicles: [
        ...QUICK_VEHICLES,
        {
          id: 'barge',
          name: 'Barge',
          parts: [{ kind: 'plate', centre: [0, 0], width: 12, length: 40, height }]
        }
      ]
    }),
    'all'
  );

describe('a vehicle whose plate is too large for its height', { timeout: PATIENCE }, () => {
  it('is a problem that names the plate', () => {
    const { beyondModel, findings } = withPlate(0.05);
    expect(beyondModel).toEqual(['barge']);
    const finding = findings.find(({ code }) => code === 'vehicle-too-low');
    expect(finding).toMatchObject({ severity: 'problem', subject: 'barge' });
    expect(finding!.message).toContain('Barge');
    expect(finding!.message).toMatch(/12\.00 m × 40\.00 m at 50/);
  });

  it('is none where it is high enough', () => {
    expect(withPlate(1.5).beyondModel).toEqual([]);
  });
});
