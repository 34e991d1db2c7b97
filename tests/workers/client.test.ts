import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Assessment } from '#analysis/results';
import { site as siteSchema } from '#plan/schema';
import type { QuestionKind } from '#analysis/questions';
import { createAssessmentClient, type AssessmentClient, type CalculationState } from '#workers/client';
import type { Answer, Question, Reply } from '#workers/transport';

interface Call {
  readonly transport: number;
  readonly revision: number;
  readonly prepare: boolean;
  answer(revision?: number, pending?: boolean): void;
  refuse(reason: string): void;
}

const site = siteSchema.parse({ format: 'kerfline-site', version: 1 });

const EMPTY: Assessment = {
  pending: false,
  isFollowed: false,
  loops: [],
  couplings: [],
  circuits: [],
  probes: [],
  channels: [],
  beats: [],
  weakerBeats: 0,
  beyondModel: [],
  passes: null,
  detectionHeights: null,
  calls: null,
  quantities: null,
  findings: []
};

/** Promise callbacks run before the next macrotask. */
const settle = () => new Promise((resolve) => setImmediate(resolve));

interface Asked {
  readonly revision: number;
  answer(revision?: number): void;
  /** Without a reply: the calculation gave up for something newer. */
  giveUp(): void;
  say(share: number): void;
  refuse(reason: string): void;
}

const QUESTION: Question<'advise-turns'> = {
  kind: 'advise-turns',
  site,
  asked: { circuit: 'C1', wish: { least_H: 8e-5, most_H: 3e-4, leastQ: 5 } }
};

class Bench {
  readonly calls: Call[] = [];
  readonly questions: Asked[] = [];
  readonly answers: number[] = [];
  readonly states: CalculationState[] = [];
  readonly closed: number[] = [];
  readonly dropped: QuestionKind[] = [];
  readonly crashes: ((reason: string) => void)[] = [];
  readonly timers = new Set<() => void>();
  starts = 0;
  refuseToConnect = false;
  readonly client: AssessmentClient;

  constructor() {
    this.client = createAssessmentClient({
      connect: (onCrash) => {
        if (this.refuseToConnect) throw new Error('no workers here');
        const transport = this.crashes.push(onCrash) - 1;
        return {
          assess: (_site, revision, prepare) =>
            new Promise<Answer>((resolve, reject) => {
              this.calls.push({
                transport,
                revision,
                prepare,
                answer: (claimed = revision, pending = false) => {
                  resolve({ revision: claimed, assessment: { ...EMPTY, pending } });
                },
                refuse: (reason) => {
                  reject(new Error(reason));
                }
              });
            }),
          ask: <K extends QuestionKind>(
            _question: Question<K>,
            revision: number,
            say: (share: number) => void
          ) =>
            new Promise<Reply<K> | null>((resolve, reject) => {
              this.questions.push({
                revision,
                say,
                answer: (claimed = revision) => {
                  resolve({ revision: claimed, answer: null as Reply<K>['answer'] });
                },
                giveUp: () => {
                  resolve(null);
                },
                refuse: (reason) => {
                  reject(new Error(reason));
                }
              });
            }),
          drop: (kind) => this.dropped.push(kind),
          close: () => this.closed.push(transport)
        };
      },
      onAnswer: ({ revision }) => this.answers.push(revision),
      onState: (state) => this.states.push(state),
      timer: {
        after: (_delay, callback) => {
          this.starts++;
          this.timers.add(callback);
          return () => this.timers.delete(callback);
        }
      },
      patience: 10
    });
  }

  get state() {
    return this.states.at(-1);
  }

  call(index: number): Call {
    const call = this.calls[index];
    if (!call) throw new Error(`call ${index} was not made`);
    return call;
  }

  runOutOfPatience() {
    for (const callback of [...this.timers]) {
      this.timers.delete(callback);
      callback();
    }
  }
}

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});

describe('one at a time', () => {
  test('an answer is handed on and the client rests', async () => {
    bench.client.request(site, 1);
    expect(bench.state).toEqual({ kind: 'working' });
    bench.call(0).answer();
    await settle();
    expect(bench.answers).toEqual([1]);
    expect(bench.state).toEqual({ kind: 'idle' });
    expect(bench.timers.size).toBe(0);
  });

  test('only the newest of the requests that waited is sent', async () => {
    for (const revision of [1, 2, 3, 4]) bench.client.request(site, revision);
    expect(bench.calls.map((call) => call.revision)).toEqual([1]);
    bench.call(0).answer();
    await settle();
    expect(bench.calls.map((call) => call.revision)).toEqual([1, 4]);
    bench.call(1).answer();
    await settle();
    expect(bench.answers).toEqual([1, 4]);
  });
});

describe('an answer that is pending', () => {
  test('is handed on, and asked for again until it is whole', async () => {
    bench.client.request(site, 1);
    bench.call(0).answer(1, true);
    await settle();
    expect(bench.answers).toEqual([1]);
    expect(bench.call(1)).toMatchObject({ revision: 1, prepare: true });
    bench.call(1).answer(1, true);
    await settle();
    bench.call(2).answer();
    await settle();
    expect(bench.answers).toEqual([1, 1, 1]);
    expect(bench.calls.map(({ prepare }) => prepare)).toEqual([false, true, true]);
    expect(bench.state).toEqual({ kind: 'idle' });
  });

  test('makes way for a newer request', async () => {
    bench.client.request(site, 1);
    bench.client.request(site, 2);
    bench.call(0).answer(1, true);
    await settle();
    expect(bench.call(1)).toMatchObject({ revision: 2, prepare: false });
  });
});

describe('what goes wrong', () => {
  test('an answer that claims another revision is dropped', async () => {
    bench.client.request(site, 7);
    bench.call(0).answer(6);
    await settle();
    expect(bench.answers).toEqual([]);
  });

  test('a lost answer restarts the calculation once and repeats the newest request', async () => {
    bench.client.request(site, 1);
    bench.client.request(site, 2);
    bench.runOutOfPatience();
    expect(bench.closed).toEqual([0]);
    expect(bench.call(1)).toMatchObject({ transport: 1, revision: 2 });
    bench.call(1).answer();
    await settle();
    expect(bench.answers).toEqual([2]);
  });

  test('an abandoned transport that answers or fails late changes nothing', async () => {
    bench.client.request(site, 1);
    bench.runOutOfPatience();
    bench.call(0).refuse('late');
    await settle();
    expect(bench.state).toEqual({ kind: 'working' });
    bench.call(1).answer();
    await settle();
    expect(bench.answers).toEqual([1]);
    expect(bench.crashes.length).toBe(2);
  });

  test('two failures in a row are reported with the reason', async () => {
    bench.client.request(site, 1);
    bench.call(0).refuse('first');
    await settle();
    bench.call(1).refuse('second');
    await settle();
    expect(bench.state).toEqual({ kind: 'failed', reason: 'second' });
    expect(bench.closed).toEqual([0, 1]);
  });

  test('a later edit tries again after a reported failure', async () => {
    bench.client.request(site, 1);
    for (const index of [0, 1]) {
      bench.call(index).refuse('broken');
      await settle();
    }
    bench.client.request(site, 2);
    bench.call(2).answer();
    await settle();
    expect(bench.answers).toEqual([2]);
    expect(bench.state).toEqual({ kind: 'idle' });
  });

  test('a retry repeats the newest request', async () => {
    bench.client.request(site, 5);
    for (const index of [0, 1]) {
      bench.call(index).refuse('broken');
      await settle();
    }
    bench.client.retry();
    expect(bench.call(2).revision).toBe(5);
  });

  test('a good answer gives the restart back', async () => {
    bench.client.request(site, 1);
    bench.call(0).refuse('once');
    await settle();
    bench.call(1).answer();
    await settle();
    bench.client.request(site, 2);
    bench.call(2).refuse('again');
    await settle();
    expect(bench.state).toEqual({ kind: 'working' });
    expect(bench.call(3)).toMatchObject({ transport: 2, revision: 2 });
  });

  test('a crash restarts; a crash of a transport that was given up does not', async () => {
    bench.client.request(site, 1);
    bench.crashes[0]?.('gone');
    expect(bench.call(1)).toMatchObject({ transport: 1, revision: 1 });
    bench.crashes[0]?.('gone again');
    expect(bench.calls.length).toBe(2);
    bench.call(1).answer();
    await settle();
    expect(bench.answers).toEqual([1]);
  });

  test('a crash at rest is mended by the next request', async () => {
    bench.client.request(site, 1);
    bench.call(0).answer();
    await settle();
    bench.crashes[0]?.('gone');
    expect(bench.calls.length).toBe(1);
    bench.client.request(site, 2);
    expect(bench.call(1)).toMatchObject({ transport: 1, revision: 2 });
  });

  test('a transport that cannot be made is reported', () => {
    bench.refuseToConnect = true;
    bench.client.request(site, 1);
    expect(bench.state).toEqual({ kind: 'failed', reason: 'no workers here' });
  });

  test('nothing is handed on after closing', async () => {
    bench.client.request(site, 1);
    bench.client.close();
    bench.call(0).answer();
    await settle();
    expect(bench.answers).toEqual([]);
    expect(bench.closed).toEqual([0]);
  });
});

test('in any order of requests, answers, repeats, failures and silences, revisions only rise and the newest settles', async () => {
  const step = fc.oneof(
    fc.record({ kind: fc.constant('request' as const) }),
    fc.record({ kind: fc.constantFrom('answer' as const, 'refuse' as const), pick: fc.nat(200) }),
    fc.record({ kind: fc.constantFrom('silence' as const, 'crash' as const) })
  );
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 40 }), async (steps) => {
      const run = new Bench();
      let revision = 0;
      const done = new Set<Call>();
      const unansweredOf = (transport: number) =>
        run.calls.filter((call) => call.transport === transport && !done.has(call)).length;
      for (const each of steps) {
        const call = 'pick' in each ? run.calls[each.pick % Math.max(1, run.calls.length)] : undefined;
        if (each.kind === 'request') run.client.request(site, ++revision);
        else if (each.kind === 'silence') run.runOutOfPatience();
        else if (each.kind === 'crash') run.crashes.at(-1)?.('crash');
        else if (call) {
          done.add(call);
          if (each.kind === 'answer') call.answer();
          else call.refuse('refused');
        }
        await settle();
        for (const index of run.crashes.keys()) expect(unansweredOf(index)).toBeLessThanOrEqual(1);
      }
      run.client.request(site, ++revision);
      for (let index = 0; index < run.calls.length; index++) {
        run.call(index).answer();
        await settle();
      }
      expect(run.answers).toEqual([...new Set(run.answers)].sort((a, b) => a - b));
      expect(run.answers.at(-1)).toBe(revision);
      expect(run.state).toEqual({ kind: 'idle' });
    }),
    { numRuns: 200 }
  );
});

describe('questions', () => {
  test('are answered beside an assessment that is in flight', async () => {
    bench.client.request(site, 1);
    const outcome = bench.client.ask(QUESTION);
    bench.questions[0]!.answer();
    expect(await outcome).toEqual({ kind: 'answer', answer: null });
    bench.call(0).answer();
    await settle();
    expect(bench.answers).toEqual([1]);
    expect(bench.timers.size).toBe(0);
  });

  test('give way to newer ones, and a late answer to an older one is nobody’s', async () => {
    const first = bench.client.ask(QUESTION);
    const second = bench.client.ask(QUESTION);
    expect(await first).toEqual({ kind: 'superseded' });
    bench.questions[0]!.answer();
    bench.questions[1]!.answer(bench.questions[0]!.revision);
    await settle();
    let isSettled = false;
    void second.then(() => {
      isSettled = true;
    });
    await settle();
    expect(isSettled).toBe(false);
    bench.runOutOfPatience();
    expect(await second).toEqual({ kind: 'failed', reason: 'no answer within 10 s' });
  });

  test('end with the reason when the calculation throws, and leave assessments alone', async () => {
    const outcome = bench.client.ask(QUESTION);
    bench.questions[0]!.refuse('no such wire');
    expect(await outcome).toEqual({ kind: 'failed', reason: 'no such wire' });
    bench.client.request(site, 1);
    bench.call(0).answer();
    await settle();
    expect(bench.answers).toEqual([1]);
  });

  test('end when the transport dies under them', async () => {
    const outcome = bench.client.ask(QUESTION);
    bench.crashes[0]!('out of memory');
    expect((await outcome).kind).toBe('failed');
    expect(bench.closed).toEqual([0]);
  });

  test('end when there is no transport at all', async () => {
    bench.refuseToConnect = true;
    expect(await bench.client.ask(QUESTION)).toEqual({ kind: 'failed', reason: 'no workers here' });
  });

  test('are waited for as long as they say that they go on', async () => {
    const shares: number[] = [];
    const outcome = bench.client.ask(QUESTION, (share) => shares.push(share));
    const [asked] = bench.questions;
    expect(bench.starts).toBe(1);
    asked!.say(0.25);
    // the patience begins anew
    expect(bench.timers.size).toBe(1);
    expect(bench.starts).toBe(2);
    asked!.say(0.5);
    asked!.answer();
    expect((await outcome).kind).toBe('answer');
    asked!.say(0.75);
    expect(shares).toEqual([0.25, 0.5]);
    expect(bench.timers.size).toBe(0);
  });

  test('can be dropped, once, and only while they are open', async () => {
    const outcome = bench.client.ask(QUESTION);
    bench.client.drop('advise-turns');
    expect(await outcome).toEqual({ kind: 'superseded' });
    bench.questions[0]!.giveUp();
    await settle();
    bench.client.drop('advise-turns');
    expect(bench.dropped).toEqual(['advise-turns']);
    expect(bench.timers.size).toBe(0);
  });
});
