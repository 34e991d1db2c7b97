/** What a loop is wound of and how it lies in its slot: turns, wire, the slot's depth and width, the tail. */
import { wiresOf } from '../catalogue/wires';
import { updateLoop } from '../edits/loops';
import type { Patch } from '../edits/list';
import { typedTail } from '../edits/routes';
import type { Loop, Site } from '../schema';
import {
  all,
  around,
  byId,
  chosen,
  continuous,
  counted,
  onSite,
  stepsOf,
  type VariableDefinition
} from './definition';

const ofLoop = (
  read: (loop: Loop, site: Site) => number | null,
  patch: (loop: Loop, value: number, site: Site) => Patch<Omit<Loop, 'id'>> | null,
  range: (present: number, site: Site) => ReturnType<VariableDefinition['range']>
): VariableDefinition => {
  const value: VariableDefinition['value'] = ({ site }, { subject }) => {
    const loop = byId(site.loops, subject);
    return loop ? read(loop, site) : null;
  };
  return {
    value,
    put: (experiment, { subject }, next) => {
      const { site } = experiment;
      const change = patch(byId(site.loops, subject)!, next, site);
      return change && onSite(experiment, updateLoop(site, subject!, change));
    },
    range: (experiment, variable) => range(value(experiment, variable)!, experiment.site),
    subjects: ({ loops }) => all(loops)
  };
};

/** More turns than anybody winds into a road; the document may hold more. */
const MOST_TURNS = 20;

export const turns = ofLoop(
  (loop) => loop.turns,
  (_, value) => ({ turns: value }),
  (present) => counted(1, Math.max(MOST_TURNS, present))
);

export const slotDepth = ofLoop(
  ({ slot }) => slot.depth,
  ({ slot }, value) => ({ slot: { ...slot, depth: value } }),
  (present, site) => continuous(...around(present, 0.02, 0.3), stepsOf(site).depth)
);

export const slotWidth = ofLoop(
  ({ slot }) => slot.width,
  ({ slot }, value) => ({ slot: { ...slot, width: value } }),
  (present, site) => continuous(...around(present, 0.003, 0.02), stepsOf(site).fine)
);

/** A typed length ends that the tail is drawn. */
export const tailLength = ofLoop(
  ({ tail }) => tail.length,
  ({ tail }, value) => ({ tail: typedTail(tail, value) }),
  (present, site) => continuous(...around(present, 0, 50), stepsOf(site).way)
);

export const wire = ofLoop(
  (loop, site) => {
    const at = wiresOf(site).findIndex(({ id }) => id === loop.wire);
    return at < 0 ? null : at;
  },
  (_, value, site) => {
    const to = wiresOf(site)[value];
    return to ? { wire: to.id } : null;
  },
  (_, site) => chosen(wiresOf(site).map(({ name, id }) => name || id))
);
