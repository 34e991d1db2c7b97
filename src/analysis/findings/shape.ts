/** A shape that cannot be cut or wound, and corner cuts that leave hardly any straight side. */
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
        message: `${called(loop)} cannot be cut: its ${cut ? 'corner cut' : problem.key} is ${problem.found}, expected ${problem.expected}.`,
        advice: cut ? 'Make the corner cut smaller or the loop larger.' : 'Correct the shape.'
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
        message: `Corner cuts of ${say(shape.cornerCut, 'length')} leave only ${say(straight, 'length')} of the ${say(side, 'length')} side of ${called({ id, name })} straight.`,
        advice: 'About a sixth of the side at each corner is usual; a larger cut makes the loop smaller.'
      }
    ];
  });
