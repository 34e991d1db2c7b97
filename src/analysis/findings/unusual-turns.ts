/**
 * Turns that give the loop alone an inductance outside 50–700 µH, the window that units must accept (NEMA TS 1/TS 2, from
 * memory). Inductance goes with about N² for turns that lie together, which the suggested number uses.
 */
import { t } from '#i18n/message';
import { called, type FindingRule } from './finding';

export const LEAST_INDUCTANCE = 50e-6;
export const MOST_INDUCTANCE = 700e-6;

export const unusualTurns: FindingRule = ({ loops, say }) =>
  loops
    .filter(
      ({ readout }) => readout.inductance_H < LEAST_INDUCTANCE || readout.inductance_H > MOST_INDUCTANCE
    )
    .map(({ loop, readout }) => {
      const few = readout.inductance_H < LEAST_INDUCTANCE;
      const exact = loop.turns * Math.sqrt((few ? LEAST_INDUCTANCE : MOST_INDUCTANCE) / readout.inductance_H);
      const turns = Math.max(1, few ? Math.ceil(exact) : Math.floor(exact));
      return {
        severity: 'caution' as const,
        code: 'turns',
        subject: loop.id,
        selects: [loop.id],
        message: t(few ? 'finding.turns.few' : 'finding.turns.many', {
          count: loop.turns,
          loop: called(loop),
          inductance: say(readout.inductance_H, 'inductance')
        }),
        advice:
          turns === loop.turns
            ? t('finding.turns.size')
            : t(few ? 'finding.turns.least' : 'finding.turns.most', {
                turns,
                inductance: say(few ? LEAST_INDUCTANCE : MOST_INDUCTANCE, 'inductance')
              })
      };
    });
