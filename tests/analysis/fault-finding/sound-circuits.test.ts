/** What a sound circuit's meters should say: the product against a network built turn by turn, wire by wire. */
import { describe, expect, test } from 'vitest';
import { expectedInSteps } from '#analysis/fault-finding/expected';
import { finish } from '#analysis/steps';
import type { Quantity } from '#plan/schema';
import { drawSite } from '../../support/faulty-network/design';
import type { Figure } from '../../support/faulty-network/measure';
import { createRandom } from '../../support/faulty-network/random';
import { soundFigures } from '../../support/faulty-network/sample';

const SITES = 40;

/**
 * Shares. Direct current is arithmetic. The product lets the voltage rise evenly along a winding, the network lets every turn
 * have its own, and its own current: a few hundredths of what capacitance does to L and Q. The vehicle's best place is looked for in steps: the
 * product's search stops up to a few percent short of the summit over quadrupoles.
 */
const ALLOWED: Partial<Record<Quantity, number>> = {
  resistanceDc_ohm: 1e-9,
  inductance_H: 1e-4,
  q: 2e-4,
  frequency_Hz: 1e-4,
  deltaLOverL: 5e-2
};
const OF_CAPACITANCE: Partial<Record<Quantity, number>> = { inductance_H: 0.03, q: 0.06 };

const nameOf = ({ testPoint, loop, quantity }: Omit<Figure, 'value'>): string =>
  `${testPoint} ${loop ?? ''} ${quantity}`;

describe('expected readings', () => {
  test('are those of the network', { timeout: 180_000 }, () => {
    const errors = new Map<Quantity, number[]>();
    const places = new Set<string>();
    for (let seed = 0; seed < SITES; seed++) {
      const site = drawSite(createRandom(seed));
      const circuit = site.circuits[0]!;
      const [expectation] = finish(expectedInSteps(site, circuit.id));
      const found = new Map(
        expectation!.figures
          .filter(({ vehicle }) => vehicle === null || vehicle === 'car')
          .map((each) => [nameOf(each), each.value])
      );
      const sound = soundFigures(site, circuit);
      // between 20 and 50 kHz capacitance adds five sixths of what it adds at 50
      const slow = new Map(soundFigures(site, circuit, 20e3).map((each) => [nameOf(each), each.value]));
      for (const figure of sound) {
        const { testPoint, loop, quantity, value } = figure;
        const allowed = ALLOWED[quantity];
        if (allowed === undefined) continue;
        const what = `site ${seed}: ${nameOf(figure)}`;
        const raised = slow.get(nameOf({ testPoint, loop, quantity: 'inductance_H' }));
        const fast = sound.find(
          (each) => nameOf(each) === nameOf({ testPoint, loop, quantity: 'inductance_H' })
        );
        const capacitance = raised && fast ? Math.max(0, fast.value / raised - 1) : 0;
        expect(found.get(nameOf(figure)), what).toBeTypeOf('number');
        const error = Math.abs(found.get(nameOf(figure))! / value - 1);
        expect(error, what).toBeLessThan(allowed + (OF_CAPACITANCE[quantity] ?? 0) * capacitance);
        places.add(`${testPoint} ${quantity}`);
        errors.set(quantity, [...(errors.get(quantity) ?? []), error]);
      }
    }
    const middle = (quantity: Quantity): number => {
      const sorted = errors.get(quantity)!.sort((a, b) => a - b);
      return sorted[sorted.length >> 1]!;
    };
    expect(middle('inductance_H')).toBeLessThan(5e-5);
    expect(middle('q')).toBeLessThan(1e-4);
    expect(middle('deltaLOverL')).toBeLessThan(1e-2);
    const metered = ['resistanceDc_ohm', 'inductance_H', 'q'];
    expect([...places].sort()).toEqual(
      [
        ...['loop', 'pull-box', 'cabinet'].flatMap((at) => metered.map((quantity) => `${at} ${quantity}`)),
        ...['unit frequency_Hz', 'unit deltaLOverL']
      ].sort()
    );
  });
});
