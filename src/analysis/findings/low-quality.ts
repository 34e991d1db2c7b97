/** Quality factor under 5: the limit of common acceptance clauses (NEMA TS 1/TS 2, from memory; a city's revision of WSDOT 8-20.3(14)D). */
import { t } from '#i18n/message';
import { figures } from '#units/digits';
import type { CircuitReadout, LossShare } from '../results';
import { loopsIn } from '#plan/wiring';
import { called, type FindingContext, type FindingRule } from './finding';

export const LEAST_Q = 5;

const causes = ({ losses }: CircuitReadout): LossShare[] =>
  [...losses].sort((a, b) => b.resistance_ohm - a.resistance_ohm);

const largest = (readout: CircuitReadout, say: FindingContext['say']): string =>
  causes(readout)
    .slice(0, 2)
    .map(({ cause, resistance_ohm }) =>
      t('finding.lowQ.share', {
        share: say(resistance_ohm / readout.resistance_ohm, 'ratio'),
        cause: t(`finding.lowQ.is.${cause}`)
      })
    )
    .join(t('finding.and'));

export const lowQuality: FindingRule = ({ circuits, say }) =>
  circuits
    .filter(({ readout }) => !(readout.q >= LEAST_Q))
    .map(({ circuit, readout }) => ({
      severity: 'problem' as const,
      code: 'low-q',
      subject: circuit.id,
      selects: loopsIn(circuit),
      message: t('finding.lowQ', {
        circuit: called(circuit),
        q: figures(readout.q, 3),
        frequency: say(readout.frequency_Hz, 'frequency'),
        least: LEAST_Q
      }),
      advice: t('finding.lowQ.advice', {
        resistance: say(readout.resistance_ohm, 'resistance'),
        causes: largest(readout, say),
        remedy: t(`finding.lowQ.against.${causes(readout)[0]!.cause}`)
      })
    }));
