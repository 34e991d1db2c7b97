/** A shape that cannot be cut or wound, and corner cuts that leave hardly any straight side. */
import { t } from '#i18n/message';
import { problemOf } from '#plan/shapes/index';
import { called, type FindingRule } from './finding';

/** Share of the shorter side that should stay straight: common practice takes a sixth of a side at each corner. */
const LEAST_STRAIGHT = 1 / 3;

export const impossibleShape: FindingRule = ({ site }) =>
  site.loops.flatMap((loop) => {
    const problem = problemOf(loop.shape);
    if (!problem) return [];
    const cut = problem.key === 'cornerCut';
    return [
      {
        severity: 'problem' as const,
        code: cut ? 'corner-cut' : 'shape',
        subject: loop.id,
        selects: [loop.id],
        message: t('finding.shape', {
          loop: called(loop),
          what: t(`finding.shape.${problem.key}`),
          found: problem.found,
          expected: problem.expected
        }),
        advice: t(cut ? 'finding.shape.cornerCut.advice' : 'finding.shape.advice')
      }
    ];
  });

export const cornerCut: FindingRule = ({ loops, say }) =>
  loops.flatMap(({ loop: { id, name, shape } }) => {
    if (shape.kind !== 'rectangle') return [];
    const side = Math.min(shape.width, shape.length);
    const straight = side - 2 * shape.cornerCut;
    if (straight >= LEAST_STRAIGHT * side) return [];
    return [
      {
        severity: 'caution' as const,
        code: 'corner-cut',
        subject: id,
        selects: [id],
        message: t('finding.cornerCut', {
          cut: say(shape.cornerCut, 'length'),
          straight: say(straight, 'length'),
          side: say(side, 'length'),
          loop: called({ id, name })
        }),
        advice: t('finding.cornerCut.advice')
      }
    ];
  });
