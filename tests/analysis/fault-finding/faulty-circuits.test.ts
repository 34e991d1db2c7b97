/**
 * What each fault makes of every figure: the product's forward models against a network built turn by turn, wire by wire, with the
 * fault in it as a piece of the network. Steel is not among them: the network takes it from the product.
 */
import { describe, expect, test } from 'vitest';
import type { AskedFigure } from '#analysis/fault-finding/forward/contract';
import { prepareInSteps } from '#analysis/fault-finding/forward/prepare';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Quantity } from '#plan/schema';
import { SINGLES } from '../../support/faulty-network/faults';
import type { Figure } from '../../support/faulty-network/measure';
import type { Single } from '../../support/faulty-network/planted';
import { exactFault, soundFigures } from '../../support/faulty-network/sample';

const DESIGNS = 12;

/** Shares; on top of it what capacitance may do. A vehicle's best place is found in steps, and moves with the fault. */
const ALLOWED: Readonly<Record<Quantity, number>> = {
  resistanceDc_ohm: 1e-6,
  inductance_H: 2e-4,
  q: 5e-4,
  frequency_Hz: 2e-4,
  insulation_ohm: 1e-6,
  insulationBetween_ohm: 1e-3,
  deltaLOverL: 6e-2
};

/**
 * The product lets the voltage rise evenly along a winding, the network lets every turn have its own: a few hundredths of what
 * capacitance adds (see the sound circuits). With turns bridged it also counts which end lies on ground, which nobody knows:
 * the network takes the last, the product no side.
 */
const ofCapacitance = (kind: Single, quantity: Quantity): number => {
  if (quantity !== 'inductance_H' && quantity !== 'q' && quantity !== 'frequency_Hz') return 0;
  return kind === 'shorted turns' ? 0.3 : 0.06;
};

/** ΔL/L: a hundredth of a percent is nothing. */
const FAINT = 1e-4;

/** Half of them are nearer than this. */
const USUAL: Readonly<Partial<Record<Quantity, number>>> = {
  inductance_H: 1e-4,
  q: 4e-4,
  frequency_Hz: 1e-4,
  deltaLOverL: 2.5e-2
};

/** Ω above which insulation is sound in all but name. */
const SOUND = 1e13;

const askedOf = ({ testPoint, loop, quantity }: Figure): AskedFigure => ({
  ...{ testPoint, loop, quantity },
  ...{ meterFrequency_Hz: null, temperature_C: null, setting: null },
  vehicle: quantity === 'deltaLOverL' ? 'car' : null
});

const means = createMeans();

interface Compared {
  readonly what: string;
  readonly quantity: Quantity;
  readonly error: number;
  readonly allowed: number;
}

/** Errors of one design by quantity; what cannot be compared as a share is checked at once. */
const errorsOf = (kind: Single, seed: number): Compared[] => {
  const { site, circuit, planted, figures, at } = exactFault(kind, seed);
  const prepared = finish(prepareInSteps(site, circuit.id, ['car'], means))!;
  const { subject, values, variant } = planted;
  const faults = kind === 'nothing wrong' ? [] : [{ kind, subject, values, variant }];
  const predicted = prepared.predict(faults, figures.map(askedOf));
  const inductances = (of: readonly Figure[]) =>
    of.filter(({ quantity, value }) => quantity === 'inductance_H' && value !== Infinity);
  const raises = (slow: readonly Figure[], fast: readonly Figure[]): number[] =>
    slow.length === fast.length ? fast.map(({ value }, k) => value / slow[k]!.value - 1) : [];
  const sound = (frequency: number) => inductances(soundFigures(site, circuit, frequency));
  /** Between 20 and 50 kHz, with the fault or without it, wherever most. */
  const raised = Math.max(
    0,
    ...raises(inductances(at(20e3)), inductances(at(50e3))),
    ...raises(sound(20e3), sound(50e3))
  );
  return figures.flatMap((figure, k): Compared[] => {
    const { testPoint, loop, quantity, value } = figure;
    const what = `${kind} ${seed} (${planted.severity}): ${quantity} at ${testPoint} ${loop ?? ''}`;
    const said = predicted[k]!;
    if (value === Infinity) expect(said, what).toBe('over range');
    else if (value > SOUND) expect(said, what).toBe('sound');
    else {
      expect(said, what).toBeTypeOf('number');
      if (quantity === 'deltaLOverL' && Math.abs(value - (said as number)) < FAINT) return [];
      const error = Math.abs((said as number) / value - 1);
      return [{ what, quantity, error, allowed: ALLOWED[quantity] + ofCapacitance(kind, quantity) * raised }];
    }
    return [];
  });
};

describe.each(SINGLES.filter((kind) => kind !== 'steel near'))('%s', (kind) => {
  test('reads as on the network', { timeout: 180_000 }, () => {
    const errors = Array.from({ length: DESIGNS }, (_, seed) => errorsOf(kind, seed)).flat();
    expect(errors.length).toBeGreaterThan(2 * DESIGNS);
    const beyond = errors.filter(({ error, allowed }) => !(error < allowed));
    expect(beyond.map(({ what, error }) => `${what}: ${error.toExponential(1)}`)).toEqual([]);
    for (const [quantity, most] of Object.entries(USUAL)) {
      const own = errors.filter((each) => each.quantity === quantity).map(({ error }) => error);
      if (own.length > 0) expect(own.sort((a, b) => a - b)[own.length >> 1], quantity).toBeLessThan(most);
    }
  });
});
