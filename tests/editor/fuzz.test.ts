/**
 * Random hands on random plans: a hundred seeds, two hundred deeds each. After every deed the document reads back from its
 * file as the same document; undo and redo go through exactly the documents that there were; in the end everything taken
 * back gives the very first one, everything done again the last one.
 */
import { describe, expect, it } from 'vitest';
import { emptySite, readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { createEditor } from '#editor/create-editor';
import { DEPTH } from '#editor/history';
import { allRefs, includesRef } from '#editor/selection';
import { chanceOf, type Chance } from './fuzz/chance';
import { DEEDS, type Hands } from './fuzz/deeds';
import { handOf } from './hand';

const SEEDS = 100;
const STEPS = 200;
/** Things on a plan at which a walk begins to delete: a larger one tells nothing new and takes longer to read. */
const CROWD = 60;

/** The document after each number of steps that can be undone, as far as it is known. */
type Trail = (Site | undefined)[];

const TOTAL = DEEDS.reduce((sum, [weight]) => sum + weight, 0);

function deedOf(chance: Chance): (hands: Hands) => string {
  let left = chance.next() * TOTAL;
  for (const [weight, deed] of DEEDS) {
    left -= weight;
    if (left < 0) return deed;
  }
  return DEEDS[0]![1];
}

/** A few steps back and some of them again, each to the very document that there was. */
function travel({ editor, chance }: Hands, trail: Trail): string {
  const back = 1 + chance.below(5);
  const again = chance.below(back + 1);
  const check = (): void => {
    const known = trail[editor.undoSteps().length];
    if (known) expect(editor.state.site).toBe(known);
  };
  for (let step = 0; step < back; step++) {
    editor.undo();
    check();
  }
  for (let step = 0; step < again; step++) {
    editor.redo();
    check();
  }
  return `undo ${back}, redo ${again}`;
}

function checkState({ editor }: Hands, before: Site): void {
  const { site, selection, draft, busy } = editor.state;
  expect(draft).toBeNull();
  expect(busy).toBe(false);
  const refs = allRefs(site);
  expect(selection.filter((ref) => !includesRef(refs, ref))).toEqual([]);
  if (site === before) return;
  const text = writeSite(site);
  const read = readSite(text);
  expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
  if (read.ok) expect(writeSite(read.site)).toBe(text);
}

interface Walk {
  readonly steps: number;
  readonly loops: number;
  readonly kinds: ReadonlySet<string>;
}

function walk(seed: number, said: string[]): Walk {
  const chance = chanceOf(seed);
  const start = emptySite();
  const editor = createEditor(start);
  editor.setViewport({ centre: [0, 0], scale: 50, width: 1000, height: 800 });
  const hands: Hands = { editor, hand: handOf(editor), chance };
  const trail: Trail = [start];
  const kinds = new Set<string>();
  let loops = 0;
  for (let step = 0; step < STEPS && editor.undoSteps().length < DEPTH - 10; step++) {
    const before = editor.state.site;
    if (allRefs(before).length > CROWD) {
      editor.select(allRefs(before));
      editor.run('unlock-all');
      editor.run('delete');
      said.push('clear the plan');
    } else said.push(chance.yes(0.06) ? travel(hands, trail) : deedOf(chance)(hands));
    checkState(hands, before);
    const { site } = editor.state;
    const count = editor.undoSteps().length;
    if (site !== before) {
      trail.length = Math.min(trail.length, count);
      trail[count] = site;
    }
    for (const { kind } of allRefs(site)) kinds.add(kind);
    loops = Math.max(loops, site.loops.length);
  }
  const end = editor.state.site;
  const steps = editor.undoSteps().length;
  for (let step = 0; step < steps; step++) editor.undo();
  expect(editor.state.site).toBe(start);
  expect(writeSite(editor.state.site)).toBe(writeSite(emptySite()));
  for (let step = 0; step < steps; step++) editor.redo();
  expect(editor.state.site).toBe(end);
  return { steps, loops, kinds };
}

/** Says which seed failed and what it had done, so that it can be walked again. */
function walked(seed: number): Walk {
  const said: string[] = [];
  try {
    return walk(seed, said);
  } catch (cause) {
    throw new Error(`seed ${seed}, deed ${said.length}:\n${said.slice(-12).join('\n')}`, { cause });
  }
}

describe('a random hand', () => {
  it(
    'never leaves a document that could not be opened, and can take everything back',
    { timeout: 240_000 },
    () => {
      const walks = Array.from({ length: SEEDS }, (_, index) => walked(20_260_400 + index));
      const sum = (of: (walk: Walk) => number): number => walks.reduce((all, each) => all + of(each), 0);
      // A fuzz that draws nothing proves nothing.
      expect(sum(({ steps }) => steps)).toBeGreaterThan(4_000);
      expect(sum(({ loops }) => loops)).toBeGreaterThan(500);
      const kinds = new Set(walks.flatMap((each) => [...each.kinds]));
      expect([...kinds].sort()).toEqual(['lane', 'loop', 'mark', 'path', 'probe', 'steel']);
    }
  );
});
