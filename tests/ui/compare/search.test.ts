/** A search for what clears a finding leaves no question open that nobody waits for. */
import { describe, expect, it } from 'vitest';
import type { Goal } from '#analysis/goal/results';
import type { Bench } from '#ui/bench';
import { Search } from '#ui/compare/goal/search.svelte.ts';
import { bigSite } from '../../support/big-site';

const site = bigSite(1);
const finding = { code: 'cover', subject: 'L1', severity: 'caution' } as const;
const turns = { kind: 'turns', subject: 'L1' } as const;
const depth = { kind: 'slotDepth', subject: 'L1' } as const;
const found: Goal = {
  ...{ kind: 'found', from: 3, to: 2, within: 1, clears: [], tried: 1 },
  brings: [{ code: 'turns', subject: 'L1', severity: 'caution' }]
};

/** Answers when it is told to; a question that is dropped is superseded. */
const held = () => {
  const open = new Map<string, (outcome: { readonly kind: string; readonly answer?: unknown }) => void>();
  const bench = {
    shown: site,
    ask: (kind: string) =>
      new Promise((resolve) => {
        open.get(kind)?.({ kind: 'superseded' });
        open.set(kind, resolve);
      }),
    dropQuestion: (kind: string) => {
      open.get(kind)?.({ kind: 'superseded' });
      open.delete(kind);
    }
  };
  const answer = async (kind: string, given: unknown): Promise<void> => {
    const settle = open.get(kind);
    open.delete(kind);
    settle?.({ kind: 'answer', answer: given });
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { search: new Search(bench as unknown as Bench), open, answer };
};

describe('a search', () => {
  it('begun anew gives up what the one before it had asked, whatever that was', async () => {
    const { search, open, answer } = held();
    void search.start(finding, [turns], false);
    await answer('seek-goal', found);
    expect([...open.keys()]).toEqual(['compare-designs']);
    void search.start(finding, [depth], false);
    expect([...open.keys()]).toEqual(['seek-goal']);
    await answer('seek-goal', { ...found, brings: [] });
    expect(search.state).toBe('there');
    expect(search.answers.map(({ variable }) => variable)).toEqual([depth]);
  });

  it('ends when the drawing is another one, and not while it is the same', async () => {
    const { search, open, answer } = held();
    void search.start(finding, [turns, depth], true);
    await answer('seek-goal', found);
    search.keepTo(site);
    expect([...open.keys()]).toEqual(['seek-goal']);
    search.keepTo({ ...site, name: 'Another' });
    expect([...open.keys()]).toEqual([]);
    await new Promise((resolve) => setTimeout(resolve));
    expect(search.state).toBe('ended');
    expect(search.answers).toHaveLength(1);
  });
});
