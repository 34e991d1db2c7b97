/** What the drawing's own traffic comes to: outputs that do not say what happened. */
import { loopsIn } from '#plan/wiring';
import { called, type FindingRule } from './finding';

const KINDS = ['missed', 'merged', 'split', 'false'] as const;
const WORDS: Readonly<Record<(typeof KINDS)[number], string>> = {
  missed: 'missed',
  merged: 'merged into the call before',
  split: 'called more than once',
  false: 'called with nobody there'
};

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
        message:
          `With the traffic of this site ${called(circuit)} makes ${summary.calls} calls for ${summary.vehicles} vehicles: ` +
          `${wrong.map((kind) => `${summary[kind]} ${WORDS[kind]}`).join(', ')}.`,
        advice: 'Open "Passing", "Calls over time": each mistake is listed there with its cause.'
      }
    ];
  });
