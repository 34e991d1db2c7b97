/**
 * The marker of a sweep in the hand: the design takes the value that it stands at. All values that one drag crosses are one
 * undo step; a drag that ends where it began, or is given up, is none.
 */
import { changesLocked } from '#editor/locks';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { experimentOn, withValue } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import type { Bench } from '../../bench';
import { changeOf, commitField } from '../../details/commit';
import { changedBy } from '../words/variable';
import { sweepChoices } from './choices.svelte';
import type { Move } from './move';

let drags = 0;

interface Grip {
  readonly site: Site;
  readonly merge: string;
}

/** Where a vehicle drives and stands belongs to the sweep, not to the design. */
const placed = ({ kind }: Variable) => (kind === 'offset' ? 'offset_m' : kind === 'along' ? 'along_m' : null);

/** Of what there is in the design or in the sweep; turns are shorted by nobody's design. */
export const isMovable = ({ kind }: Variable): boolean => kind !== 'shortedTurns';

/** Undefined, or why the design cannot have this value. `isStep`: steps in a row are one undo step. */
export function setValue(
  bench: Bench,
  variable: Variable,
  value: number,
  isStep = false
): string | undefined {
  const key = placed(variable);
  if (key) {
    sweepChoices.place = { ...sweepChoices.place, [key]: value };
    return undefined;
  }
  const edit = (site: Site): Site => withValue(experimentOn(site), variable, value)?.site ?? site;
  const taken = commitField(bench, changedBy(bench.state.site, variable), edit, isStep);
  return taken ? undefined : t('field.impossible');
}

export function handOn(bench: Bench, variable: () => Variable | null): Move {
  let grip: Grip | null = null;
  /** The site as this drag left it: when it is another, somebody else was at work. */
  let last: Site | null = null;

  function put(moved: Variable, value: number): void {
    const { site } = bench.state;
    if (!grip || site !== last) {
      grip = { site, merge: `sweep-${++drags}` };
      last = site;
    }
    // always from where the drag began, so that going there and back leaves the drawing as it was
    const next = withValue(experimentOn(grip.site), moved, value)?.site;
    if (!next || next === site) return;
    if (changesLocked(grip.site, next)) {
      bench.editor.say(t('notice.locked'));
      return;
    }
    const label = changeOf(changedBy(site, moved));
    bench.editor.commit({ label, site: next, merge: grip.merge });
    last = bench.state.site;
  }

  return (value, how) => {
    const moved = variable();
    if (!moved) return;
    if (how === 'key') setValue(bench, moved, value, true);
    else if (placed(moved)) setValue(bench, moved, value);
    else if (how === 'drag') put(moved, value);
    else if (how === 'back' && grip && bench.state.site === last) {
      const { site, merge } = grip;
      const label = changeOf(changedBy(site, moved));
      bench.editor.commit({ label, site, merge });
    }
    if (how === 'drop' || how === 'back') grip = null;
  };
}
