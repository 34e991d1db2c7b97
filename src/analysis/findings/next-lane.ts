/** Traffic of the lane beside that makes this circuit call. */
import { t } from '#i18n/message';
import { figures } from '#units/digits';
import { loopsIn } from '#plan/wiring';
import { called, calledVehicle, type FindingRule } from './finding';

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
        const laneName = called(site.lanes.find(({ id }) => id === lane) ?? { id: lane, name: '' });
        return {
          severity: calls ? ('problem' as const) : ('caution' as const),
          code: 'next-lane',
          subject: circuit.id,
          selects: loopsIn(circuit),
          message: t('finding.nextLane', {
            vehicle: calledVehicle(vehicle, site),
            lane: laneName,
            circuit: called(circuit),
            change: say(deltaLOverL, 'ratio'),
            times: figures(-deltaLOverL / threshold, 2),
            threshold: say(threshold, 'ratio')
          }),
          advice: t(calls ? 'finding.nextLane.calls' : 'finding.nextLane.near')
        };
      });
  });
