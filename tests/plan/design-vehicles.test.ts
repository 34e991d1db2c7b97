/**
 * Sizes of the catalogue's vehicles against public tables, metres. [S] read in the table or a restatement that names it,
 * [M] from memory.
 */
import { describe, expect, it } from 'vitest';
import { listedVehicle } from '#plan/catalogue/vehicles';

interface Size {
  readonly width: number;
  readonly length: number;
}

/** [S] AASHTO, A Policy on Geometric Design of Highways and Streets (2004), design-vehicle dimensions, metric. */
const AASHTO = {
  P: { width: 2.1, length: 5.8 },
  SU: { width: 2.4, length: 9.2 },
  'CITY-BUS': { width: 2.6, length: 12.2 },
  'WB-12': { width: 2.4, length: 13.9 },
  'WB-15': { width: 2.6, length: 16.8 }
} as const;

/** [S] Council Directive 96/53/EC, annex I, section 1: the largest permitted. */
const PERMITTED = {
  motorVehicle: { width: 2.55, length: 12 },
  articulated: { width: 2.55, length: 16.5 },
  /** From the kingpin to the rear end, and to any point of the semitrailer's front. */
  kingpinToRear: 12,
  kingpinToFront: 2.04
} as const;

/** [S] Usual European classes of cars by length, as overviews of car segments restate them. */
const CLASSES = { 'car-small': [3.7, 4.2], car: [4.2, 4.6], suv: [4.6, 4.8] } as const;

/** [M] Cycle design guidance LTN 1/20: an ordinary cycle. */
const CYCLE: Size = { width: 0.65, length: 1.8 };

const sizeOf = (id: string): Size => {
  const { bodyWidth, bodyLength } = listedVehicle(id)!;
  return { width: bodyWidth, length: bodyLength };
};
const expectWithin = (id: string, least: Size, most: Size): void => {
  const { width, length } = sizeOf(id);
  expect(width).toBeGreaterThanOrEqual(least.width);
  expect(width).toBeLessThanOrEqual(most.width);
  expect(length).toBeGreaterThanOrEqual(least.length);
  expect(length).toBeLessThanOrEqual(most.length);
};

describe('the sizes of the catalogue’s vehicles', () => {
  it.each(Object.entries(CLASSES))('%s: in its class by length, below the design vehicle P', (id, range) => {
    expectWithin(id, { width: 1.5, length: range[0] }, { width: AASHTO.P.width, length: range[1] });
  });

  it('van: between P and SU by length, narrower than both allow', () => {
    expectWithin(
      'van',
      { width: 1.9, length: AASHTO.P.length },
      { width: AASHTO.P.width, length: AASHTO.SU.length }
    );
  });

  it('lorry: between SU and the largest motor vehicle permitted', () => {
    expectWithin('lorry', AASHTO.SU, PERMITTED.motorVehicle);
  });

  it('bus: CITY-BUS to within 5 %', () => {
    const { width, length } = sizeOf('bus');
    expect(width / AASHTO['CITY-BUS'].width).toBeCloseTo(1, 1);
    expect(Math.abs(length / AASHTO['CITY-BUS'].length - 1)).toBeLessThan(0.05);
  });

  it('articulated lorry: the largest permitted, between WB-12 and WB-15, its semitrailer no longer than permitted', () => {
    expect(sizeOf('lorry-articulated')).toEqual(PERMITTED.articulated);
    expectWithin('lorry-articulated', AASHTO['WB-12'], AASHTO['WB-15']);
    const floor = listedVehicle('lorry-articulated')!.parts.find(({ name }) => name === 'Trailer floor')!;
    if (floor.kind !== 'plate') throw new Error('the floor is a plate');
    expect(floor.length).toBeLessThanOrEqual(PERMITTED.kingpinToRear + PERMITTED.kingpinToFront);
    expect(floor.centre[1] - floor.length / 2).toBeCloseTo(-PERMITTED.articulated.length / 2, 9);
  });

  it.each(['bicycle', 'bicycle-steel'])('%s: an ordinary cycle to within 10 %%', (id) => {
    const { width, length } = sizeOf(id);
    expect(Math.abs(width / CYCLE.width - 1)).toBeLessThan(0.1);
    expect(Math.abs(length / CYCLE.length - 1)).toBeLessThan(0.1);
  });
});

describe('what the catalogue says of its vehicles', () => {
  it.each([
    ['car', /AASHTO/],
    ['suv', /AASHTO/],
    ['van', /AASHTO/],
    ['lorry', /96\/53\/EC/],
    ['bus', /AASHTO/],
    ['lorry-articulated', /96\/53\/EC/]
  ])('%s: names the table, and that its effective heights are an assumption', (id, table) => {
    const { source } = listedVehicle(id)!;
    expect(source).toMatch(table);
    expect(source).toMatch(/Effective heights: assumption/);
  });

  it('two bicycles differ in the metal of their rims alone', () => {
    const [aluminium, steel] = ['bicycle', 'bicycle-steel'].map((id) => listedVehicle(id)!);
    const bare = steel!.parts.map((part) => {
      const rest = { ...part };
      if (rest.kind === 'ring') {
        // mild steel, Ω·m: common practice, as of steel in the pavement
        expect(rest.resistivity_ohm_m).toBe(1.7e-7);
        expect(rest.relativePermeability).toBe(100);
        delete rest.resistivity_ohm_m;
        delete rest.relativePermeability;
      }
      return rest;
    });
    expect(bare).toEqual(aluminium!.parts);
  });
});
