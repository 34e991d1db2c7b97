/** A loop as it comes off the pointer: sized by the hand, the rest as usual, on a circuit of its own. */
import { FOOT } from '#units/constants';
import { COUNTS } from '../bounds';
import { nearestMark } from '../lead-out';
import type { Circuit, Loop, Shape, Site } from '../schema';
import { centreOf, pathOf } from '../shapes/index';
import { circuitWith } from '../wiring';
import { withFreeChannel } from './channels';
import { freeId, patched } from './list';
import { addLoop } from './loops';
import { tidyShape } from './tidy';

/** Microhenries that a loop should reach by itself, so that a lead-in does not drown it. */
const ENOUGH = 60;
const MOST_TURNS = 8;

/**
 * The fewest turns, two or more, that reach 60 µH by the rule of thumb L(µH) ≈ (P/4)(N² + N), P the perimeter in feet
 * (FHWA-IP-90-002, chapter 2). A starting point only; the readout says what the loop really has.
 */
export function usualTurns(shape: Shape): number {
  const feet = pathOf(shape).sawCut / FOOT;
  let turns = 2;
  while (turns < MOST_TURNS && (feet / 4) * (turns * turns + turns) < ENOUGH) turns += 1;
  return turns;
}

/** A tail as long as the last one; where that is drawn, drawn straight to the pull box that is nearest. */
function tailLike(site: Site, last: Loop, shape: Shape): Loop['tail'] {
  const { route } = last.tail;
  if (!route) return last.tail;
  const box = nearestMark(site, 'pull-box', centreOf(shape));
  return patched<Loop['tail']>(last.tail, { route: box && { ...route, to: box.id, via: [] } });
}

/** Wire, slot and tail as in the loop drawn last. */
export function newLoop(site: Site, shape: Shape): Loop {
  const id = freeId(site.loops, 'L');
  const last = site.loops.at(-1);
  return {
    id,
    name: id,
    turns: usualTurns(shape),
    wire: last?.wire ?? 'awg14',
    slot: last?.slot ?? { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: last ? tailLike(site, last, shape) : { length: 4 },
    shape: tidyShape(shape)
  };
}

/**
 * A circuit for one loop, with the lead-in of the circuit drawn last and the next free channel; the same site when the
 * loop is not there or wired already.
 */
export function addCircuitFor(site: Site, loop: string, name: string): Site {
  const isThere = site.loops.some(({ id }) => id === loop);
  if (!isThere || circuitWith(site, loop) || site.circuits.length >= COUNTS.circuits) return site;
  const { site: wired, channel } = withFreeChannel(site);
  const circuit: Circuit = {
    id: freeId(site.circuits, 'C'),
    name,
    strings: [[{ loop, reversed: false }]],
    leadIn: site.circuits.at(-1)?.leadIn ?? { cable: 'pair-14', length: 30 },
    channel,
    detect: ['car']
  };
  return { ...wired, circuits: [...wired.circuits, circuit] };
}

/** Adds the loop with its circuit; the same site when the loop is refused. */
export function addWiredLoop(site: Site, loop: Loop): Site {
  const added = addLoop(site, loop);
  return added === site ? site : addCircuitFor(added, loop.id, loop.name);
}
