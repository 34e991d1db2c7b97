/** Quality factor under 5: the limit of common acceptance clauses (NEMA TS 1/TS 2, from memory; a city's revision of WSDOT 8-20.3(14)D). */
import { called, loopIds, type FindingRule } from './finding';

const LEAST_Q = 5;

export const lowQuality: FindingRule = ({ circuits, say }) =>
  circuits
    .filter(({ readout }) => !(readout.q >= LEAST_Q))
    .map(({ circuit, readout }) => ({
      severity: 'problem' as const,
      code: 'low-q',
      subject: circuit.id,
      selects: loopIds(circuit),
      message: `${called(circuit)} has Q = ${readout.q.toPrecision(3)} at ${say(readout.frequency_Hz, 'frequency')}; under ${LEAST_Q} the oscillator may fail.`,
      advice: `Its resistance is ${say(readout.resistance_ohm, 'resistance')}: use thicker wire or lead-in cable, a shorter lead-in, or more turns.`
    }));
