/** Published limits by which loops are accepted; each value with where it was published. */
import { describe, expect, test } from 'vitest';
import { ACCEPTANCE_LIMITS, limitsOfSite, type AcceptanceLimit } from '#plan/catalogue/acceptance';

const limit = (id: string): AcceptanceLimit => ACCEPTANCE_LIMITS.find((each) => each.id === id)!;

describe('acceptance limits', () => {
  // a city's revision of WSDOT Standard Specifications 8-20.3(14)D
  test('circuit resistance at most 5 Ω, Q at least 5 at 50 kHz', () => {
    expect(limit('wsdot-8-20-resistance')).toMatchObject({
      quantity: 'resistanceDc_ohm',
      most: 5,
      least: null,
      isFromMemory: false
    });
    expect(limit('wsdot-8-20-q')).toMatchObject({
      quantity: 'q',
      least: 5,
      most: null,
      frequency_Hz: 50_000,
      isFromMemory: false
    });
  });

  // WAC 296-46B-300
  test('insulation at least 50 MΩ at 500 V', () => {
    expect(limit('wac-296-46b-300-insulation')).toMatchObject({
      quantity: 'insulation_ohm',
      least: 50e6,
      voltage_V: 500,
      isFromMemory: false
    });
  });

  // California Standard Specifications, section 86, from memory of the source
  test('insulation at least 100 MΩ, said to be from memory', () => {
    expect(limit('california-86-insulation')).toMatchObject({ least: 100e6, isFromMemory: true });
  });

  // FP-96 section 636
  test('a loop between 60 and 100 µH', () => {
    expect(limit('fp-96-636-inductance')).toMatchObject({
      quantity: 'inductance_H',
      testPoints: ['loop'],
      least: 60e-6,
      most: 100e-6,
      isFromMemory: false
    });
  });

  test('a site that chooses none has the resistance, the Q and the insulation read in a published source', () => {
    expect(limitsOfSite({}).every(({ isFromMemory }) => !isFromMemory)).toBe(true);
    expect(limitsOfSite({}).map(({ quantity }) => quantity)).toEqual(
      expect.arrayContaining(['resistanceDc_ohm', 'q', 'insulation_ohm'])
    );
    expect(limitsOfSite({ fieldCheck: { limits: [] } })).toEqual([]);
  });
});
