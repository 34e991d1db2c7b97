/**
 * What every file of synthetic faults asks of the diagnosis, for its share of the causes. A circuit is drawn by chance,
 * built within its tolerances by chance with one fault in it, as a network of single turns and wires of its own, and read
 * by meters of the usual accuracy: see `support/faulty-network`.
 */
import { describe, expect, test } from 'vitest';
import type { Single } from '../../support/faulty-network/planted';
import { tally, tryOut } from '../../support/faulty-network/trial';

/** Random designs a cause: what the test run has time for, or as many as FAULT_DESIGNS says. The bench takes others. */
const DESIGNS = Number(process.env['FAULT_DESIGNS'] ?? 10);

const FIRST = 0.9;
const IN_THREE = 0.99;
/** Of healthy circuits. */
const FALSE_ALARMS = 0.05;

const trialsOf = (kind: Single) => Array.from({ length: DESIGNS }, (_, seed) => tryOut(kind, seed, 'full'));

export const checkCauses = (kinds: readonly Single[]): void => {
  describe.each(kinds)('%s', (kind) => {
    test('comes first, and hardly ever after the third', { timeout: 240_000 }, () => {
      const trials = trialsOf(kind);
      const { first, inThree } = tally(trials);
      const missed = trials
        .filter(({ rank }) => rank > 1)
        .map(({ seed, severity, rank, first: said }) => `${seed} (${severity}): ${rank}, ${said} first`);
      expect(first, missed.join('\n')).toBeGreaterThanOrEqual(FIRST);
      expect(inThree, missed.join('\n')).toBeGreaterThanOrEqual(IN_THREE);
    });
  });
};

export const checkSound = (): void => {
  describe('sound circuits', () => {
    test('no cause is claimed but in fewer than one of twenty', { timeout: 240_000 }, () => {
      const trials = trialsOf('nothing wrong');
      const alarms = trials.filter(({ rank }) => rank > 1);
      const said = alarms.map(({ seed, first }) => `${seed}: ${first}`).join('\n');
      expect(alarms.length / trials.length, said).toBeLessThan(FALSE_ALARMS);
    });
  });
};
