/**
 * A plan within a limit, by trying: the channel with the fewest choices left for the trouble it has made comes next, its
 * present choice first, and every choice made takes from the others what no longer goes with it. Starts afresh from time
 * to time with what it has learnt of the trouble, ever later, so that in the end it has been through everything.
 */
import { alikeChoices } from './alike';
import { countOf, firstOf, holds, put, setOnly } from './bits';
import { createCrowding } from './crowding';
import type { Network } from './network';
import type { PlanProblem } from './problem';

type Attempt = 'found' | 'none' | 'more';

export interface Backtracker {
  /** Goes on for at most so many choices; 'none' is a proof. */
  run(most: number): Attempt;
  /** Choices tried so far. */
  readonly nodes: () => number;
  /** Once found: the choice of a channel of the part. */
  readonly choiceOf: (channel: number) => number;
}

const LOOKS_ON_TRIAL = 500;
/** Looking is worth while when one look in so many refuses. */
const LEAST_USE = 20;
const SELDOM = 16;

const FIRST_START = 400;
const LONGER = 1.5;

/**
 * `part`: the channels to be decided, in the order that ties are broken; arcs that lead out of it do not count. The
 * network has to be thinned out: a channel with one choice left takes nothing from the others.
 */
export const createBacktracker = (
  network: Network,
  part: readonly number[],
  { present, ranks }: Pick<PlanProblem, 'present' | 'ranks'>
): Backtracker => {
  const { words } = network;
  const size = part.length;
  const placeOf = new Map(part.map((channel, place) => [channel, place]));
  const arcs = part.map((channel) =>
    network.arcs[channel]!.flatMap(({ to, masks }) => {
      const place = placeOf.get(to);
      return place === undefined ? [] : [{ to: place, masks }];
    })
  );
  const width = size * words;
  /** The choices left, level by level. */
  const levels = new Int32Array((size + 1) * width);
  part.forEach((channel, place) => {
    for (let w = 0; w < words; w++) levels[place * words + w] = network.domains[channel * words + w]!;
  });
  const orders = part.map((channel, place) => orderOf(network, channel, present[channel]!, arcs[place]!));
  const crowding = createCrowding(
    arcs,
    (place) => orders[place]!,
    words,
    (place, choice) => ranks?.[part[place]!]![choice] ?? choice
  );
  const alike = alikeChoices(arcs, (place) => orders[place]!, words);
  const hasAlike = alike.some((first, choice) => first !== choice);
  /** Of each level: choices that somebody has taken, and choices whose like has been tried. */
  const taken = new Int32Array((size + 1) * words);
  const triedLike = new Int32Array((size + 1) * words);
  const waiting = new Int32Array(size);
  /** How often the room was looked at, and how often it was too small. */
  let looks = 0;
  let refusals = 0;
  /** A channel counts the more, the more it limits others and the more often choices failed on it. */
  const trouble = arcs.map((list) => list.length + 1);
  const chosen = new Int32Array(size + 1).fill(-1);
  const tried = new Int32Array(size + 1);
  const queue = new Int32Array(size + 1);
  let depth = 0;
  let nodes = 0;
  let sinceStart = 0;
  let startsAfter = FIRST_START;

  const select = (): number => {
    const base = depth * width;
    let best = -1;
    let bestCost = Infinity;
    for (let place = 0; place < size; place++) {
      const count = countOf(levels, base + place * words, words);
      if (count === 1) continue;
      const cost = count / trouble[place]!;
      if (cost < bestCost) [best, bestCost] = [place, cost];
    }
    return best;
  };

  /** The next choice of the level's channel that is still left; −1 when all have been tried. */
  const nextChoice = (): number => {
    const place = chosen[depth]!;
    const at = depth * width + place * words;
    const order = orders[place]!;
    while (tried[depth]! < order.length) {
      const choice = order[tried[depth]!++]!;
      if (!holds(levels, at, choice)) continue;
      if (!hasAlike || holds(taken, depth * words, choice)) return choice;
      if (holds(triedLike, depth * words, alike[choice]!)) continue;
      put(triedLike, depth * words, alike[choice]!);
      return choice;
    }
    return -1;
  };

  const enter = (place: number): void => {
    chosen[depth] = place;
    tried[depth] = 0;
    if (!hasAlike) return;
    triedLike.fill(0, depth * words, (depth + 1) * words);
    taken.fill(0, depth * words, (depth + 1) * words);
    for (let other = 0; other < size; other++) {
      const at = depth * width + other * words;
      if (countOf(levels, at, words) === 1) put(taken, depth * words, firstOf(levels, at));
    }
  };

  /** What a choice takes from the others, on the level below; false when one is left with nothing. */
  const choose = (place: number, choice: number): boolean => {
    const below = (depth + 1) * width;
    levels.copyWithin(below, depth * width, below);
    setOnly(levels, below + place * words, words, choice);
    let waiting = 0;
    queue[waiting++] = place;
    // a channel comes here when it is down to one choice, which happens once
    for (let next = 0; next < waiting; next++) {
      const from = queue[next]!;
      const own = firstOf(levels, below + from * words) * words;
      for (const { to, masks } of arcs[from]!) {
        const theirs = below + to * words;
        let isThinner = false;
        for (let w = 0; w < words; w++) {
          const left = levels[theirs + w]! & masks[own + w]!;
          if (left === levels[theirs + w]) continue;
          levels[theirs + w] = left;
          isThinner = true;
        }
        if (!isThinner) continue;
        const count = countOf(levels, theirs, words);
        if (count === 0) {
          trouble[to]! += 1;
          trouble[from]! += 1;
          return false;
        }
        if (count === 1) queue[waiting++] = to;
      }
    }
    return true;
  };

  /** Whether the level below has room for all; where looking has hardly ever helped it is done now and then only. */
  const hasRoom = (): boolean => {
    if (looks > LOOKS_ON_TRIAL && refusals * LEAST_USE < looks && nodes % SELDOM !== 0) return true;
    const below = (depth + 1) * width;
    let count = 0;
    for (let place = 0; place < size; place++)
      if (countOf(levels, below + place * words, words) > 1) waiting[count++] = place;
    if (count < 2) return true;
    looks += 1;
    if (!crowding.isTooFull(levels, below, waiting, count)) return true;
    refusals += 1;
    return false;
  };

  const startAfresh = (): void => {
    depth = 0;
    chosen[0] = -1;
    sinceStart = 0;
    startsAfter *= LONGER;
  };

  const run = (most: number): Attempt => {
    const end = nodes + most;
    if (
      nodes === 0 &&
      size > 1 &&
      crowding.isTooFull(
        levels,
        0,
        part.map((_, place) => place),
        size
      )
    )
      return 'none';
    while (nodes < end) {
      if (chosen[depth] === -1) {
        const place = select();
        if (place < 0) return 'found';
        enter(place);
      }
      const choice = nextChoice();
      if (choice < 0) {
        if (depth === 0) return 'none';
        chosen[depth] = -1;
        depth -= 1;
        continue;
      }
      nodes += 1;
      sinceStart += 1;
      if (choose(chosen[depth]!, choice) && hasRoom()) {
        depth += 1;
        chosen[depth] = -1;
      }
      if (sinceStart > startsAfter) startAfresh();
    }
    return 'more';
  };

  return {
    run,
    nodes: () => nodes,
    choiceOf: (channel) => firstOf(levels, depth * width + placeOf.get(channel)! * words)
  };
};

/** The present choice, then those that take least from the others. */
const orderOf = (
  { words, domains }: Network,
  channel: number,
  present: number,
  arcs: readonly { readonly masks: Int32Array }[]
): number[] => {
  const own: number[] = [];
  for (let choice = 0; choice < 32 * words; choice++)
    if (holds(domains, channel * words, choice)) own.push(choice);
  const left = new Map(
    own.map((choice) => [
      choice,
      arcs.reduce((sum, { masks }) => sum + countOf(masks, choice * words, words), 0)
    ])
  );
  return own.sort(
    (a, b) => Number(b === present) - Number(a === present) || left.get(b)! - left.get(a)! || a - b
  );
};
