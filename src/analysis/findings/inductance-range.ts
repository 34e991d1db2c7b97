/** Terminal inductance outside what the unit accepts. */
import { t } from '#i18n/message';
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

export const inductanceRange: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const unit = site.units.find(({ id }) => id === circuit.channel?.unit);
    if (!unit) return [];
    const [least, most] = unit.inductanceRange_H;
    const value = readout.inductance_H;
    if (value >= least && value <= most) return [];
    return [
      {
        severity: 'problem' as const,
        code: 'inductance-range',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.inductanceRange', {
          circuit: called(circuit),
          inductance: say(value, 'inductance'),
          unit: called(unit),
          least: say(least, 'inductance'),
          most: say(most, 'inductance')
        }),
        advice: t(value < least ? 'finding.inductanceRange.low' : 'finding.inductanceRange.high')
      }
    ];
  });
