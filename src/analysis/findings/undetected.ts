/** A vehicle asked for that makes no call, or not on every path across the lane. */
import { t } from '#i18n/message';
import { loopsIn } from '#plan/wiring';
import { called, calledVehicle, type FindingRule } from './finding';

export const undetected: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const threshold = circuit.channel?.tripThreshold;
    if (threshold === undefined) return [];
    return readout.responses
      .filter(({ wanted, worst }) => wanted && -worst < threshold)
      .map(({ vehicle, best, worst }) => {
        const never = -best < threshold;
        const said = {
          circuit: called(circuit),
          vehicle: calledVehicle(vehicle, site),
          best: say(-best, 'ratio'),
          threshold: say(threshold, 'ratio')
        };
        return {
          severity: never ? ('problem' as const) : ('caution' as const),
          code: never ? 'undetected' : 'detected-in-part',
          subject: circuit.id,
          selects: loopsIn(circuit),
          message: never
            ? t('finding.undetected', said)
            : t('finding.detectedInPart', { ...said, worst: say(-worst, 'ratio') }),
          advice: t(never ? 'finding.undetected.advice' : 'finding.detectedInPart.advice')
        };
      });
  });
