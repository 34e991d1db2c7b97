/** Published figures of the field that a formula answers by itself. Each row of the reference file is one test. */
import { describe, expect, it } from 'vitest';
import { twistedPair } from '#physics/circuit/line';
import { coaxialCircles } from '#physics/inductance/circles';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { buildBody } from '#physics/vehicle/body';
import { filamentsOf } from '#physics/field/filaments';
import { reducedFlux } from '#physics/vehicle/flux';
import { dot } from '#physics/numeric/cholesky';
import { dcResistancePerMetre, internalImpedance } from '#physics/wire/round-wire';
import { wireOf } from '#plan/catalogue/wires';
import { PATIENCE } from './support/arbitraries';
import { expectFact, formulaFacts, numberOf, titleOf, type TradeFact } from './support/trade-facts';
import { circleWinding, mirrored, rectangleWinding } from './support/windings';

const MU0 = 4e-7 * Math.PI;
const COPPER_20 = 1.7241e-8;

const optional = (row: TradeFact, name: string, otherwise: number): number =>
  typeof row.inputs[name] === 'number' ? numberOf(row, name) : otherwise;

/** Turns of a row at its pitch; one turn where it names none. */
const wound = (row: TradeFact, turns = optional(row, 'turns', 1)): Winding => {
  const wireRadius = optional(row, 'wireRadius', optional(row, 'wireDiameter', 0.001628) / 2);
  const wires = { turns, wireRadius, pitch: optional(row, 'pitch', 0.0038) };
  const radius = optional(row, 'radius', optional(row, 'diameter', 0) / 2);
  return radius > 0
    ? circleWinding(radius, wires)
    : rectangleWinding(numberOf(row, 'width'), numberOf(row, 'length'), wires);
};

/** H, with the internal part at the row's frequency; µ0/8π a metre at direct current. */
const inductanceOf = (row: TradeFact): number => {
  const winding = wound(row);
  const frequency = numberOf(row, 'frequency');
  const internal =
    frequency === 0 ? MU0 / (8 * Math.PI) : internalImpedance(winding.wireRadius, frequency, 20).inductance;
  return externalInductance(winding) + internal * winding.wireLength;
};

/** Skin effect at a given a√(ωµσ), on a wire of 1 mm radius. */
const skin = (row: TradeFact): { readonly resistance: number; readonly inductance: number } => {
  const a = 1e-3;
  const frequency = (numberOf(row, 'aRootOmegaMuSigma') / a) ** 2 * (COPPER_20 / (2 * Math.PI * MU0));
  const { resistance, inductance } = internalImpedance(a, frequency, 20);
  return {
    resistance: resistance / dcResistancePerMetre(a, 20),
    inductance: inductance / (MU0 / (8 * Math.PI))
  };
};

const ruleOfThumb = (width: number, length: number, turns: number): number =>
  ((2 * (width + length)) / 0.3048 / 4) * (turns ** 2 + turns) * 1e-6;

/** Turns of the rows on a perfect sheet: as the rows on turns have them. */
const PITCH = 0.00381;
/** Answer of a perfect sheet `height` over the middle turn, as a share of the loop's inductance at 20 kHz. */
const sheet = (row: TradeFact): number => {
  const winding = rectangleWinding(numberOf(row, 'width'), numberOf(row, 'length'), {
    turns: numberOf(row, 'turns'),
    pitch: PITCH
  });
  const middle = -0.05 + PITCH * ((numberOf(row, 'turns') - 1) / 2);
  const internal = internalImpedance(winding.wireRadius, 2e4, 20).inductance * winding.wireLength;
  const image = mirrored(winding, middle + numberOf(row, 'height'));
  return -mutualInductance(winding, image) / (externalInductance(winding) + internal);
};

const ANSWERS: readonly (readonly [beginning: string, answer: (row: TradeFact) => number])[] = [
  [
    'twisted-pair-',
    (row) =>
      twistedPair(numberOf(row, 'spacing'), numberOf(row, 'wireDiameter'), 1, numberOf(row, 'frequency'), 20)
        .inductance
  ],
  ['skin-resistance-', (row) => skin(row).resistance],
  ['skin-inductance-', (row) => skin(row).inductance],
  [
    'awg14-skin-',
    (row) => {
      const a = numberOf(row, 'wireDiameter') / 2;
      return internalImpedance(a, numberOf(row, 'frequency'), 20).resistance / dcResistancePerMetre(a, 20);
    }
  ],
  [
    'coaxial-circles-',
    (row) => coaxialCircles(numberOf(row, 'radius1'), numberOf(row, 'radius2'), numberOf(row, 'apart'))
  ],
  ['circle-dc', inductanceOf],
  ['rectangle-dc-', inductanceOf],
  ['square-dc-', inductanceOf],
  ['one-turn-', inductanceOf],
  ['turns-', inductanceOf],
  ['circle-turns-', inductanceOf],
  [
    'side-by-side-',
    (row) => {
      const side = numberOf(row, 'width');
      const other = rectangleWinding(side, side, {}, [side + numberOf(row, 'gap'), 0]);
      return mutualInductance(rectangleWinding(side, side), other);
    }
  ],
  [
    'one-above-other-',
    (row) => {
      const side = numberOf(row, 'width');
      const other = rectangleWinding(side, side, { bottom: -0.05 + numberOf(row, 'apart') });
      return mutualInductance(rectangleWinding(side, side), other);
    }
  ],
  ['sheet-', sheet],
  [
    'rule-of-thumb',
    (row) => ruleOfThumb(numberOf(row, 'width'), numberOf(row, 'length'), numberOf(row, 'turns'))
  ]
];

const catalogued = formulaFacts.filter(({ id }) => /^awg\d\d-(diameter|resistance)/.test(id));
const spread = formulaFacts.filter(({ id }) => id === 'rule-of-thumb-spread');
const answered = formulaFacts.filter((row) => !catalogued.includes(row) && !spread.includes(row));

describe('what a formula answers', () => {
  it.each(answered.map((row) => [titleOf(row), row] as const))('%s', (_, row) => {
    const answer = ANSWERS.find(([beginning]) => row.id.startsWith(beginning))?.[1];
    if (!answer) throw new Error(`nothing answers ${row.id}`);
    expectFact(row, answer(row));
  });
});

describe('what the wire catalogue says', () => {
  it.each(catalogued.map((row) => [titleOf(row), row] as const))('%s', (_, row) => {
    const wire = wireOf(String(row.inputs['wire']), { wires: [] })!;
    const temperature = optional(row, 'temperature_C', 20);
    expectFact(
      row,
      row.expected.quantity === 'diameter_m'
        ? wire.conductorDiameter
        : dcResistancePerMetre(wire.conductorDiameter / 2, temperature)
    );
  });
});

describe('the rule of thumb against the physics, one to three turns', () => {
  it.each(spread.map((row) => [titleOf(row), row] as const))('%s', (_, row) => {
    const width = numberOf(row, 'width');
    for (const feet of [6, 10, 20, 30, 40, 50])
      for (const turns of [1, 2, 3]) {
        const winding = rectangleWinding(width, feet * 0.3048, { turns, pitch: PITCH });
        const internal = internalImpedance(winding.wireRadius, 2e4, 20).inductance * winding.wireLength;
        const rule = ruleOfThumb(width, feet * 0.3048, turns);
        expectFact(row, rule / (externalInductance(winding) + internal));
      }
  });
});

describe('a perfect sheet is a limit that a vehicle stays below', { timeout: PATIENCE }, () => {
  const sheets = formulaFacts.filter(({ id }) => id.startsWith('sheet-'));
  it.each(sheets.map((row) => [titleOf(row), row] as const))('%s: a plate of a car', (_, row) => {
    const winding = rectangleWinding(1.8288, 1.8288, { turns: 3, pitch: PITCH });
    const height = PITCH - 0.05 + numberOf(row, 'height');
    const body = buildBody([{ kind: 'plate', x: 0, y: 0, width: 1.6, length: 4.2, height }], 0.6);
    const flux = reducedFlux(body, filamentsOf(winding), { x: 0, y: 0, heading: 90 });
    const found = -dot(flux, flux) / externalInductance(winding);
    expect(found).toBeLessThan(0);
    expect(found).toBeGreaterThan(row.expected.value!);
  });
});
