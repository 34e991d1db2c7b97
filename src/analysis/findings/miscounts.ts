/** What the drawing's own traffic comes to: outputs that do not say what happened. */
import { t } from '#i18n/message';
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

const KINDS = ['missed', 'merged', 'split', 'false'] as const;
export const miscounts: FindingRule = ({ site, result }) =>
  (result.calls ?? []).flatMap((summary) => {
    const circuit = site.circuits.find(({ id }) => id === summary.circuit);
    const wrong = KINDS.filter((kind) => summary[kind] > 0);
    if (!circuit || wrong.length === 0) return [];
    // one call for several that stand together is what presence is for; it miscounts, and does no harm to a stop line
    const grave = summary.missed > 0 || summary.false > 0;
    return [
      {
        severity: grave ? ('caution' as const) : ('note' as const),
        code: 'miscounts',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.miscounts', {
          circuit: called(circuit),
          calls: summary.calls,
          vehicles: summary.vehicles,
          mistakes: wrong.map((kind) => t(`finding.miscounts.${kind}`, { number: summary[kind] })).join(', ')
        }),
        advice: t('finding.miscounts.advice')
      }
    ];
  });
