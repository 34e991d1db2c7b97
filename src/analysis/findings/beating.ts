/** Two channels that run at the same time and disturb each other. */
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

/** Where the verdict turns to clear. */
const CLEAR_RATIO = 0.25;

export const beating: FindingRule = ({ site, result, say }) =>
  result.beats
    .filter(({ verdict }) => verdict !== 'clear')
    .map((beat) => {
      const [a, b] = [beat.a, beat.b].map((id) => site.circuits.find((circuit) => circuit.id === id)!);
      const units = [a, b].map((circuit) => site.units.find(({ id }) => id === circuit!.channel?.unit)!);
      const time = Math.min(...units.map((unit) => unit.measuringTime_s));
      // from where the averaging sets in the ripple falls in inverse proportion to the distance
      const apart = (Math.max(beat.separation_Hz, 1 / (Math.PI * time)) * beat.ratio) / CLEAR_RATIO;
      return {
        severity: beat.verdict === 'watch' ? ('caution' as const) : ('problem' as const),
        code: 'beating',
        subject: `${beat.a} + ${beat.b}`,
        selects: [...loopsIn(a!), ...loopsIn(b!)],
        message:
          `${called(a!)} and ${called(b!)} run at the same time, ${say(beat.separation_Hz, 'frequency')} apart, ` +
          `coupled by k = ${beat.k.toPrecision(2)}: a ripple of ${say(beat.ripple, 'ratio')}, ` +
          `${beat.ratio.toPrecision(2)} times the trip threshold (${beat.verdict}).`,
        advice:
          `Keep their frequencies at least ${say(apart, 'frequency')} apart by other frequency settings, ` +
          'move the loops apart, or connect both to one unit that scans its channels in turn.'
      };
    });
