import { describe, expect, it } from 'vitest';
import {
  coverOf,
  dcResistanceOf,
  impedanceOf,
  leakageOf,
  modelLoop,
  type LoopModel
} from '#analysis/electrical/loop-model';
import { wireOf } from '#plan/catalogue/wires';
import type { Loop } from '#plan/schema';
import { referenceOf, relativeError } from '../../physics/support/reference';

interface LoopCase {
  readonly frequency_Hz: number;
  readonly temperature_C: number;
  readonly loop: Loop;
  readonly inductance_H: number;
  readonly resistanceDc_ohm: number;
  readonly resistanceAc_ohm: number;
  readonly slotLength_m: number;
}

const { cases, tolerance, generator } = referenceOf<LoopCase>('loops');
const DRY = { temperature: 20, pavementPermittivity: 5, pavementConductivity: 0 };
const NO_WIRES = { wires: [] };
const modelled = (loop: Loop): LoopModel => {
  const model = modelLoop(loop, wireOf(loop.wire, NO_WIRES), 1);
  if (!model) throw new Error(`${loop.id} cannot be wound`);
  return model;
};
const square = cases.find(({ loop }) => loop.shape.kind === 'rectangle')!.loop;

describe(`a loop with its copper (${generator})`, () => {
  it.each(cases)('$loop.name', (row) => {
    const model = modelled(row.loop);
    const { inductance, resistance } = impedanceOf(model, row.frequency_Hz, {
      ...DRY,
      temperature: row.temperature_C
    });
    // the closed forms of a circle with itself differ in terms of (wire radius / radius)²
    const { shape } = row.loop;
    const round = shape.kind === 'circle' ? (model.wire.conductorDiameter / shape.diameter) ** 2 : 0;
    expect(relativeError(inductance, row.inductance_H)).toBeLessThan(tolerance + round);
    expect(relativeError(resistance, row.resistanceAc_ohm)).toBeLessThan(tolerance);
    expect(relativeError(dcResistanceOf(model, row.temperature_C), row.resistanceDc_ohm)).toBeLessThan(
      tolerance
    );
    expect(relativeError(model.sawCut, row.slotLength_m)).toBeLessThan(1e-11);
  });
});

describe('a loop that cannot be wound', () => {
  it('has no model: an unknown wire, an impossible shape', () => {
    expect(modelLoop(square, wireOf('awg13', NO_WIRES), 1)).toBeNull();
    const shape = {
      kind: 'rectangle',
      centre: [0, 0],
      width: 1,
      length: 1,
      rotation: 0,
      cornerCut: 0.6
    } as const;
    expect(modelLoop({ ...square, shape }, wireOf(square.wire, NO_WIRES), 1)).toBeNull();
  });
});

describe('cover', () => {
  it.each([
    [0.05, 3, 0.05 - 3 * 0.0038],
    [0.03, 4, 0.03 - 4 * 0.0038],
    [0.01, 3, 0.01 - 3 * 0.0038]
  ])('over a slot %f m deep with %i turns of 3.8 mm', (depth, turns, wanted) => {
    const loop = { ...square, wire: 'awg14', turns, slot: { ...square.slot, depth } };
    expect(coverOf(modelled(loop))).toBeCloseTo(wanted, 12);
  });

  it('counts both halves in the middle slot of a quadrupole', () => {
    const shape = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3, rotation: 0 } as const;
    const loop = { ...square, wire: 'awg14', turns: 2, slot: { ...square.slot, depth: 0.05 }, shape };
    expect(coverOf(modelled(loop))).toBeCloseTo(0.05 - 4 * 0.0038, 12);
  });
});

describe('temperature and pavement', () => {
  it('change resistance and capacitance as they should: 0.393 % a kelvin; more permittivity, more capacitance', () => {
    const model = modelled(square);
    expect(dcResistanceOf(model, 45) / dcResistanceOf(model, 20)).toBeCloseTo(1 + 25 * 0.00393, 12);
    const toGround = (pavementPermittivity: number, pavementConductivity = 0) =>
      leakageOf(model, square, 5e4, { ...DRY, pavementPermittivity, pavementConductivity }).ground;
    expect(toGround(20).capacitance).toBeGreaterThan(toGround(3).capacitance);
    expect(toGround(5).conductance).toBe(0);
    expect(toGround(5, 1e-3).conductance).toBeGreaterThan(0);
    // a pavement that conducts well is a metal wall: only insulation and fill are left
    expect(toGround(5, 10).capacitance).toBeCloseTo(toGround(1e9).capacitance, 15);
  });
});
