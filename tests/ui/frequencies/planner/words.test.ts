/** The sentences of a frequency plan. */
import { describe, expect, it } from 'vitest';
import type { FrequencyPlan, PlannedChannel, PlanState } from '#analysis/frequency-plan/plan';
import {
  countLines,
  noteWords,
  remaining,
  remainsWords,
  resultLines,
  tuningWords
} from '#ui/frequencies/planner/words';

const METRIC = { displayUnits: 'metric' } as const;

const channel = (circuit: string, over: Partial<PlannedChannel> = {}): PlannedChannel => ({
  circuit,
  unit: 'U1',
  number: 1,
  before: { setting: 1, frequency_Hz: 40_000 },
  after: { setting: 1, frequency_Hz: 40_000 },
  kept: null,
  excluded: [],
  ...over
});
const moved = channel('C1', { after: { setting: 3, frequency_Hz: 52_350 } });

const state = (changeable: number | null, falseCalls = 0, clear = 3): PlanState => ({
  worst:
    changeable === null
      ? []
      : [
          {
            a: 'C1',
            b: 'C2',
            ratio: changeable,
            verdict: changeable > 1 ? 'false calls likely' : changeable < 0.25 ? 'clear' : 'watch',
            isKept: false
          }
        ],
  verdicts: { clear, watch: 0, 'false calls likely': falseCalls },
  changeable
});

const plan = (over: Partial<FrequencyPlan> = {}): FrequencyPlan => ({
  channels: [moved, channel('C2')],
  before: state(3.4, 3, 0),
  after: state(0.06),
  smallest: 0.06,
  isProven: true,
  lowerBound: 0.06,
  nodes: 10,
  ...over
});

describe('what a plan says', () => {
  it('names what it improves, and that it is proven', () => {
    expect(resultLines(plan(), 'smallest ripple')).toEqual([
      'Worst ripple ×3.4 → ×0.060 of the trip threshold.',
      'Proven: no settings leave less than ×0.060.'
    ]);
    expect(countLines(plan()).map(({ text }) => text)).toEqual([
      'False calls likely: 3 → 0',
      'Watch: 0',
      'Clear: 0 → 3'
    ]);
    expect(remaining(plan())).toEqual([]);
  });

  it('says that no change is needed where every pair is clear already', () => {
    expect(resultLines(plan({ before: state(0.08) }), 'smallest ripple')).toEqual([
      'Every pair is clear as it is: other settings would only add margin.',
      'Worst ripple ×0.080 → ×0.060 of the trip threshold.',
      'Proven: no settings leave less than ×0.060.'
    ]);
  });

  it('says what is left open when the search did not get to the end', () => {
    const open = plan({ isProven: false, lowerBound: 0.05 });
    expect(resultLines(open, 'smallest ripple')[1]).toMatch(
      /^Not proven best, .* less than ×0\.050, which is 17 % lower\.$/
    );
  });

  it('says that few changes leave more than could be', () => {
    const few = plan({ after: state(0.19), smallest: 0.06 });
    expect(resultLines(few, 'fewest changes')).toEqual([
      'Worst ripple ×3.4 → ×0.19 of the trip threshold.',
      'With more changes the worst ripple could be ×0.060.',
      'Proven: no settings leave less than ×0.060.'
    ]);
  });

  it.each([
    [
      'nothing runs together',
      plan({ channels: [channel('C1')], before: state(null), after: state(null) }),
      /^No two circuits run at the same time/
    ],
    [
      'everything is kept',
      plan({
        channels: [
          channel('C1', { kept: 'pinned' }),
          channel('C2', { kept: 'given' }),
          channel('C3', { kept: 'one setting' }),
          channel('C4', { kept: 'pinned' })
        ],
        after: { ...state(2), changeable: null }
      }),
      /^No channel is free to change: 2 pinned, 1 with a given frequency, and 1 with one setting only\./
    ],
    ['it is the best', plan({ channels: [channel('C1')], after: state(0.06) }), /as good as settings can be/],
    [
      'nothing better was found',
      plan({ channels: [channel('C1')], isProven: false, lowerBound: 0.01 }),
      /no better settings were found/
    ]
  ])('says why nothing changes: %s', (_, given, sentence) => {
    const [first, ...rest] = resultLines(given, 'smallest ripple');
    expect(first).toMatch(sentence);
    expect(rest.join()).not.toContain('→');
    expect(rest.includes('Unpin a channel to plan with it.')).toBe(
      given.channels.some(({ kept }) => kept === 'pinned')
    );
  });

  it('says that every pair is clear already where few changes are asked for', () => {
    const given = plan({ channels: [channel('C1')], before: state(0.1), after: state(0.1) });
    expect(resultLines(given, 'fewest changes')[0]).toMatch(/every pair that settings can clear is clear/);
  });

  it('names a pair that stays bad, and whether settings could do anything about it', () => {
    const site = {
      circuits: [
        { id: 'C1', name: 'Entry' },
        { id: 'C2', name: '' }
      ]
    } as unknown as Parameters<typeof remainsWords>[0];
    const bad = { a: 'C1', b: 'C2', ratio: 5.04, verdict: 'false calls likely' } as const;
    expect(remainsWords(site, { ...bad, isKept: false })).toBe(
      'Entry + C2 stays at ×5.0: false calls likely.'
    );
    expect(remainsWords(site, { ...bad, isKept: true })).toContain(
      'Neither of its channels is free to change.'
    );
  });
});

describe('a line of the plan’s table', () => {
  it('tells settings, given frequencies and channels that do not oscillate apart', () => {
    expect(tuningWords(METRIC, { setting: 3, frequency_Hz: 52_350 })).toBe('3 · 52.35 kHz');
    expect(tuningWords(METRIC, { setting: null, frequency_Hz: 50_000 })).toBe('given · 50.00 kHz');
    expect(tuningWords(METRIC, { setting: 2, frequency_Hz: null })).toBe('2 · does not oscillate');
  });

  it('says why a channel stays and what was not offered to it', () => {
    expect(noteWords(channel('C1'))).toBe('');
    expect(noteWords(channel('C1', { kept: 'pinned' }))).toBe('pinned');
    const excluded = [
      { setting: 1, frequency_Hz: 12_000, why: 'outside the usual band' },
      { setting: 2, frequency_Hz: 13_000, why: 'outside the usual band' },
      { setting: 8, frequency_Hz: null, why: 'no oscillation' }
    ] as const;
    expect(noteWords(channel('C1', { excluded }))).toBe(
      'settings 1 and 2 not offered: outside 20 to 100 kHz; setting 8 not offered: it would not oscillate'
    );
    expect(noteWords(channel('C1', { kept: 'no oscillation', excluded }))).toBe('oscillates on no setting');
  });
});
