/** Traffic of the lane beside that makes this circuit call. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

/** From this share of the threshold on the pick-up is mentioned. */
const CAUTION_FROM = 0.5;

export const nextLane: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const threshold = circuit.channel?.tripThreshold;
    if (threshold === undefined) return [];
    return readout.neighbours
      .filter(({ deltaLOverL }) => -deltaLOverL >= CAUTION_FROM * threshold)
      .map(({ lane, vehicle, deltaLOverL }) => {
        const calls = -deltaLOverL >= threshold;
        const name = called(vehicleOf(vehicle, site) ?? { id: vehicle, name: '' }).toLowerCase();
        const laneName = called(site.lanes.find(({ id }) => id === lane) ?? { id: lane, name: '' });
        return {
          severity: calls ? ('problem' as const) : ('caution' as const),
          code: 'next-lane',
          subject: circuit.id,
          selects: loopsIn(circuit),
          message:
            `A ${name} in the middle of ${laneName} changes ${called(circuit)} by ${say(deltaLOverL, 'ratio')}, ` +
            `${(-deltaLOverL / threshold).toPrecision(2)} times its threshold of ${say(threshold, 'ratio')}.`,
          advice: calls
            ? 'Move the loop away from that lane, make it narrower, use a quadrupole, or raise the threshold as far as the smallest vehicle asked for allows.'
            : 'Vehicles that keep to the near side of their lane may make a call; leave more distance or raise the threshold.'
        };
      });
  });
