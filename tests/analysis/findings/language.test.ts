/** The same assessor in two languages: what it keeps by content must not keep sentences. */
import { afterAll, describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Finding } from '#analysis/results';
import { speakWhole } from '#i18n/whole';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

afterAll(() => {
  speakWhole('en');
});

const site = siteOf({
  lanes: [
    {
      id: 'lane1',
      name: 'West',
      centreline: [
        [0, -20],
        [0, 20]
      ],
      width: 3.5
    }
  ],
  loops: [
    loop('L1', { kind: 'rectangle', centre: [0, 0], width: 0.6, length: 0.6, cornerCut: 0.25 }, { turns: 1 }),
    loop('L2', square(0, 4), { turns: 12, slot: { depth: 0.03, width: 0.003 } }),
    loop('L3', square(0, 9))
  ],
  circuits: [
    circuit('C1', ['L1'], { detect: ['car', 'lorry'], leadIn: { cable: 'pair-18', length: 400 } }),
    circuit('C2', ['L2'], { detect: ['bicycle'] })
  ],
  units: [unit('U1', { inductanceRange_H: [1e-4, 2e-4] })],
  steel: [
    {
      id: 's1',
      kind: 'plate',
      depth: 0.08,
      outline: [
        [-3, 2],
        [3, 2],
        [3, 6],
        [-3, 6]
      ]
    }
  ]
});

const textsOf = (findings: readonly Finding[]): readonly string[] =>
  findings.flatMap(({ message, advice }) => [message, advice]);

/** Small words that no German sentence has. */
const ENGLISH = /\b(the|of|is|are|its|and|with|or|than|would|be|that|which|loop|turns?|wire)\b/i;

describe('findings', () => {
  const assessor = createAssessor();

  it('follow the language, though figures are kept', { timeout: 60_000 }, () => {
    const english = assessor.assess(site, 'complete').findings;
    speakWhole('de');
    const german = assessor.assess(site, 'complete').findings;
    speakWhole('en');
    const again = assessor.assess(site, 'complete').findings;

    expect(new Set(english.map(({ code }) => code)).size).toBeGreaterThan(6);
    expect(german.map(({ code, subject }) => [code, subject])).toEqual(
      english.map(({ code, subject }) => [code, subject])
    );
    expect(again).toEqual(english);
    expect(textsOf(german).filter((text) => ENGLISH.test(text))).toEqual([]);
    expect(textsOf(english).filter((text) => !ENGLISH.test(text))).toEqual([]);
  });

  it('write German figures with a comma', { timeout: 60_000 }, () => {
    speakWhole('de');
    const texts = textsOf(assessor.assess(site, 'complete').findings);
    expect(texts.filter((text) => /\d\.\d/.test(text))).toEqual([]);
    expect(texts.some((text) => /\d,\d/.test(text))).toBe(true);
  });
});
