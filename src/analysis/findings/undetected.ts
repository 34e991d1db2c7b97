/** A vehicle asked for that makes no call, or not on every path across the lane. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

export const undetected: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const threshold = circuit.channel?.tripThreshold;
    if (threshold === undefined) return [];
    return readout.responses
      .filter(({ wanted, worst }) => wanted && -worst < threshold)
      .map(({ vehicle, best, worst }) => {
        const name = called(vehicleOf(vehicle, site) ?? { id: vehicle, name: '' }).toLowerCase();
        const never = -best < threshold;
        return {
          severity: never ? ('problem' as const) : ('caution' as const),
          code: never ? 'undetected' : 'detected-in-part',
          subject: circuit.id,
          selects: loopsIn(circuit),
          message: never
            ? `${called(circuit)} does not detect a ${name}: ${say(-best, 'ratio')} at best, the threshold is ${say(threshold, 'ratio')}.`
            : `${called(circuit)} misses a ${name} on part of the lane: from ${say(-worst, 'ratio')} on the worst path to ${say(-best, 'ratio')} on the best, the threshold is ${say(threshold, 'ratio')}.`,
          advice: never
            ? 'Lower the threshold, bring a wire nearer to its path, add a turn, shorten the lead-in, or choose a shape with its wires closer together.'
            : 'Lower the threshold, widen the loop, or choose a shape with a wire under every path, such as a diagonal or a quadrupole.'
        };
      });
  });
