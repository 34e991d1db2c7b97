/**
 * Asks for assessments, one at a time, and hands on only answers to what was asked.
 *
 * Every request carries a revision. While one is in flight the newest waiting request replaces older ones. An answer
 * whose revision is not the one in flight (late, duplicated, or from a transport that was given up) is dropped. A
 * pending answer is handed on and asked for again, one prepared vehicle at a time, unless something newer waits; so is one
 * that is followed by more, after a pause. A
 * failure restarts the transport once and repeats the newest request; a second failure in a row is reported.
 *
 * Questions for advice have revisions of their own and go beside the assessments: only the newest is answered.
 */
import type { Site } from '#plan/schema';
import type { TurnsAdvice } from '#analysis/advice/advice';
import type { Answer, Connect, Question, Transport } from './transport';

export type CalculationState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'working' }
  | { readonly kind: 'failed'; readonly reason: string };

export type AdviceOutcome =
  | { readonly kind: 'answer'; readonly advice: TurnsAdvice | null }
  /** A newer question was asked meanwhile. */
  | { readonly kind: 'superseded' }
  | { readonly kind: 'failed'; readonly reason: string };

interface Timer {
  /** Calls back after `delay` seconds; the result cancels. */
  after(delay: number, callback: () => void): () => void;
}

export interface ClientOptions {
  readonly connect: Connect;
  readonly onAnswer: (answer: Answer) => void;
  readonly onState: (state: CalculationState) => void;
  readonly timer: Timer;
  /** Seconds without an answer after which the transport counts as dead. */
  readonly patience: number;
}

export interface AssessmentClient {
  request(site: Site, revision: number): void;
  /** Asks again for the newest request after a failure. */
  retry(): void;
  /** Never rejects; settles also when the transport dies. */
  advise(question: Question): Promise<AdviceOutcome>;
  close(): void;
}

interface Request {
  readonly site: Site;
  readonly revision: number;
  readonly prepare: boolean;
}

/** Seconds after an answer before what follows it is asked for: while a hand moves, only first answers are. */
const PAUSE = 0.05;

const reasonOf = (problem: unknown) => (problem instanceof Error ? problem.message : String(problem));

export function createAssessmentClient(options: ClientOptions): AssessmentClient {
  let transport: Transport | null = null;
  let newest: Request | null = null;
  let waiting: Request | null = null;
  let inFlight: Request | null = null;
  let stopWaiting = () => {};
  let stopFollowing = () => {};
  let hasRestarted = false;
  let isClosed = false;
  let question = 0;
  /** Settles the question that is open, if there is one. */
  let endQuestion: (outcome: AdviceOutcome) => void = () => {};

  function giveUpTransport() {
    stopWaiting();
    endQuestion({ kind: 'failed', reason: 'the calculation was restarted' });
    inFlight = null;
    transport?.close();
    transport = null;
  }

  function fail(reason: string) {
    const hadRequest = inFlight !== null;
    giveUpTransport();
    // One that dies at rest is replaced when there is something to ask.
    if (isClosed || !hadRequest) return;
    if (hasRestarted) {
      // The next request, or a retry, starts afresh with one restart to spare.
      hasRestarted = false;
      waiting = null;
      options.onState({ kind: 'failed', reason });
      return;
    }
    hasRestarted = true;
    waiting = newest;
    sendWaiting();
  }

  function settle(flight: Request, answer: Answer) {
    if (inFlight !== flight || answer.revision !== flight.revision) return;
    stopWaiting();
    inFlight = null;
    hasRestarted = false;
    options.onAnswer(answer);
    const { pending, isFollowed } = answer.assessment;
    if (pending) waiting ??= { ...flight, prepare: true };
    if (waiting) return sendWaiting();
    options.onState({ kind: 'idle' });
    if (isFollowed)
      stopFollowing = options.timer.after(PAUSE, () => {
        waiting ??= { ...flight, prepare: true };
        sendWaiting();
      });
  }

  function connect(): Transport {
    const made: Transport = options.connect((reason) => {
      if (transport === made) fail(reason);
    });
    return made;
  }

  function sendWaiting() {
    const request = waiting;
    if (request === null || inFlight !== null || isClosed) return;
    waiting = null;
    stopFollowing();
    // A copy: a repeated request must not accept what an abandoned transport still says about it.
    const flight = { ...request };
    inFlight = flight;
    options.onState({ kind: 'working' });
    stopWaiting = options.timer.after(options.patience, () => {
      fail(`no answer within ${options.patience} s`);
    });
    try {
      transport ??= connect();
      transport.assess(flight.site, flight.revision, flight.prepare).then(
        (answer) => {
          settle(flight, answer);
        },
        (problem: unknown) => {
          if (inFlight === flight) fail(reasonOf(problem));
        }
      );
    } catch (problem) {
      fail(reasonOf(problem));
    }
  }

  return {
    request(site, revision) {
      newest = { site, revision, prepare: false };
      waiting = newest;
      sendWaiting();
    },
    retry() {
      waiting = newest;
      sendWaiting();
    },
    advise(asked) {
      const revision = ++question;
      endQuestion({ kind: 'superseded' });
      return new Promise((settleOnce) => {
        const stopPatience = options.timer.after(options.patience, () => {
          end({ kind: 'failed', reason: `no answer within ${options.patience} s` });
        });
        const end = (outcome: AdviceOutcome) => {
          stopPatience();
          settleOnce(outcome);
        };
        endQuestion = end;
        try {
          transport ??= connect();
          transport.advise(asked, revision).then(
            ({ revision: answered, advice }) => {
              if (answered === revision && question === revision) end({ kind: 'answer', advice });
            },
            (problem: unknown) => {
              end({ kind: 'failed', reason: reasonOf(problem) });
            }
          );
        } catch (problem) {
          end({ kind: 'failed', reason: reasonOf(problem) });
        }
      });
    },
    close() {
      isClosed = true;
      stopFollowing();
      waiting = null;
      giveUpTransport();
    }
  };
}
