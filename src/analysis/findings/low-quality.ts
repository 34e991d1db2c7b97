/** Quality factor under 5: the limit of common acceptance clauses (NEMA TS 1/TS 2, from memory; a city's revision of WSDOT 8-20.3(14)D). */
import type { CircuitReadout, LossCause, LossShare } from '../results';
import { loopsIn } from '#plan/wiring';
import { called, type FindingContext, type FindingRule } from './finding';

const LEAST_Q = 5;

/** What helps most against each cause. */
const REMEDIES: Readonly<Record<LossCause, string>> = {
  copper: 'Use thicker wire or more turns.',
  skin: 'Use more turns or a lower frequency; thicker wire helps less than its copper suggests.',
  proximity: 'Use a wire with thicker insulation, which keeps the turns apart.',
  tail: 'Shorten the tail or bring the pull box nearer.',
  'lead-in': 'Use a thicker lead-in cable or a shorter one.',
  pavement: 'Keep the slot dry and sealed; the pavement conducts.',
  steel: 'Move the loop off the steel or cut it less deep.',
  added: 'Look for the joint that adds the resistance, and solder it.'
};

const NAMES: Readonly<Record<LossCause, string>> = {
  copper: "the copper's direct-current resistance",
  skin: 'the skin effect',
  proximity: 'the proximity effect',
  tail: 'the tails',
  'lead-in': 'the lead-in',
  pavement: 'the pavement',
  steel: 'steel in the pavement',
  added: 'the resistance that was added'
};

const causes = ({ losses }: CircuitReadout): LossShare[] =>
  [...losses].sort((a, b) => b.resistance_ohm - a.resistance_ohm);

const largest = (readout: CircuitReadout, say: FindingContext['say']): string =>
  causes(readout)
    .slice(0, 2)
    .map(
      ({ cause, resistance_ohm }) =>
        `${say(resistance_ohm / readout.resistance_ohm, 'ratio')} are ${NAMES[cause]}`
    )
    .join(' and ');

export const lowQuality: FindingRule = ({ circuits, say }) =>
  circuits
    .filter(({ readout }) => !(readout.q >= LEAST_Q))
    .map(({ circuit, readout }) => ({
      severity: 'problem' as const,
      code: 'low-q',
      subject: circuit.id,
      selects: loopsIn(circuit),
      message: `${called(circuit)} has Q = ${readout.q.toPrecision(3)} at ${say(readout.frequency_Hz, 'frequency')}; under ${LEAST_Q} the oscillator may fail.`,
      advice: `Of its ${say(readout.resistance_ohm, 'resistance')}, ${largest(readout, say)}. ${REMEDIES[causes(readout)[0]!.cause]}`
    }));
