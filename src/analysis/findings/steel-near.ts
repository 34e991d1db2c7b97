/** Steel that takes a good part of what a circuit has, and steel that the saw would meet. */
import { t } from '#i18n/message';
import { INCH } from '#units/constants';
import type { DisplayUnits, Steel } from '#plan/schema';
import { slotSection } from '../section/slot-section';
import type { SteelCost } from '../results';
import { loopsIn } from '#plan/wiring';
import { called, calledVehicle, type FindingContext, type FindingRule } from './finding';

/** To the next centimetre or half inch, metres: no mat is laid more exactly. */
export function roundedUp(depth: number, units: DisplayUnits): number {
  const step = units === 'imperial' ? INCH / 2 : 0.01;
  return Math.ceil(depth / step - 1e-9) * step;
}

const depthAdvice = (
  { clearDepth_m: depth, statedShare }: SteelCost,
  { say, units }: { readonly say: FindingContext['say']; readonly units: DisplayUnits }
): string =>
  depth === null
    ? t('finding.steelNear.noDepth', { share: say(statedShare, 'ratio') })
    : t('finding.steelNear.deeper', {
        depth: say(roundedUp(depth, units), 'smallLength'),
        share: say(statedShare, 'ratio')
      });

export const steelNear: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout: { steel: cost } }) => {
    if (!cost) return [];
    const asked = cost.responses.filter(({ vehicle }) => circuit.detect.includes(vehicle));
    const worst = asked.reduce<(typeof asked)[number] | null>(
      (most, each) => (most && most.share >= each.share ? most : each),
      null
    );
    // of a response that is asked for, or of the inductance
    const isResponse = worst !== null && worst.share > cost.statedShare;
    if (!isResponse && cost.inductanceShare <= cost.statedShare) return [];
    const taken = { share: say(cost.inductanceShare, 'ratio'), circuit: called(circuit) };
    return [
      {
        severity: 'caution' as const,
        code: 'steel-near',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message:
          worst === null
            ? t('finding.steelNear', taken)
            : t('finding.steelNear.vehicle', {
                ...taken,
                response: say(worst.share, 'ratio'),
                vehicle: calledVehicle(worst.vehicle, site)
              }),
        advice: depthAdvice(cost, { say, units: site.displayUnits })
      }
    ];
  });

const topOf = (steel: Steel): number => steel.depth - (steel.kind === 'mat' ? steel.barRadius : 0);

/** Bars or a plate between the road surface and the bottom of the slot. */
export const steelInSlot: FindingRule = ({ site, loops, say }) =>
  loops.flatMap(({ loop }) => {
    // where steel lies in plan is worth asking only of what lies as shallow as that
    if (!site.steel.some((steel) => topOf(steel) < loop.slot.depth)) return [];
    const met = slotSection(loop, site)?.steel.filter(
      ({ depth, bars }) => depth > 0 && depth - (bars?.radius ?? 0) < loop.slot.depth
    );
    const [first] = met ?? [];
    if (!met || !first) return [];
    const top = first.depth - (first.bars?.radius ?? 0);
    return [
      {
        severity: 'problem' as const,
        code: 'steel-in-slot',
        subject: loop.id,
        selects: [loop.id, ...met.map(({ id }) => id)],
        message: t('finding.steelInSlot', {
          loop: called(loop),
          depth: say(loop.slot.depth, 'smallLength'),
          top: say(top, 'smallLength')
        }),
        advice: t('finding.steelInSlot.advice')
      }
    ];
  });
