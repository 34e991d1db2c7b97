/** Terminal inductance outside what the unit accepts. */
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
        message: `${called(circuit)} has ${say(value, 'inductance')} at the terminals; ${called(unit)} accepts ${say(least, 'inductance')} to ${say(most, 'inductance')}.`,
        advice:
          value < least
            ? 'Add turns, or connect its loops in series.'
            : 'Take turns off, connect loops in parallel, or shorten the lead-in.'
      }
    ];
  });
