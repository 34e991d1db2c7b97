/**
 * Which of a site's states to let go, so that few of them reach from minutes to months back.
 *
 * The newest and the oldest stay. Of the others goes the one that is missed least: the one whose neighbours are nearest
 * to each other in the ratio of their ages. What is left lies spaced by about the same ratio, whatever the rhythm of the
 * work. With the oldest R times as old as the newest and N states kept, no gap that is made is wider than R^(2/(N − 1)):
 * the N gaps between N + 1 states multiply to R, so that two neighbouring ones among them do not multiply to more.
 */

/** What each state counts as older than it is, seconds: an age of nothing has no ratio. */
export const YOUNGEST = 60;

/** Moments in seconds, newest first; the indices to drop so that `kept` are left. At least two always are. */
export function statesToDrop(moments: readonly number[], kept: number, now: number): readonly number[] {
  const left = moments.map((moment, index) => ({ index, age: Math.max(0, now - moment) + YOUNGEST }));
  const dropped: number[] = [];
  while (left.length > Math.max(2, kept)) {
    let least = 1;
    let smallest = Infinity;
    for (let at = 1; at < left.length - 1; at++) {
      const gap = left[at + 1]!.age / left[at - 1]!.age;
      if (gap < smallest) [least, smallest] = [at, gap];
    }
    dropped.push(left[least]!.index);
    left.splice(least, 1);
  }
  return dropped;
}
