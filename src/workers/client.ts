/**
 * Asks for assessments, one at a time, and hands on only answers to what was asked.
 *
 * Every request carries a revision. While one is in flight the newest waiting request replaces older ones. An answer
 * whose revision is not the one in flight (late, duplicated, or from a transport that was given up) is dropped. A
 * pending answer is handed on and asked for again, one prepared vehicle at a time, unless something newer waits; so is one
 * that is followed by more, after a pause. A
 * failure restarts the transport once and repeats the newest request; a second failure in a row is reported.
 *
 * Questions have revisions of their own and go beside the assessments: of each kind, and of each desk that asks, only the
 * newest is answered.
 */
import { t } from '#i18n/message';
import type { AnswerTo, QuestionKind } from '#analysis/questions';
import type { Site } from '#plan/schema';
import { questionKey, type Answer, type Connect, type Question, type Transport } from './transport';

export type CalculationState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'working' }
  | { readonly kind: 'failed'; readonly reason: string };

type Outcome<K extends QuestionKind> =
  | { readonly kind: 'answer'; readonly answer: AnswerTo<K> }
  /** A newer question of the kind and desk was asked meanwhile, or this one was dropped. */
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
  /** Never rejects; settles also when the transport dies. `onShare` hears how much is done, 0 to 1. */
  ask<K extends QuestionKind>(question: Question<K>, onShare?: (share: number) => void): Promise<Outcome<K>>;
  /** Ends the open question of a kind and desk, as superseded. */
  drop(kind: QuestionKind, desk?: string): void;
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
  let questions = 0;
  /** Settles the open question of a kind and desk. */
  const open = new Map<string, (outcome: Exclude<Outcome<never>, { kind: 'answer' }>) => void>();

  function giveUpTransport() {
    stopWaiting();
    for (const end of [...open.values()]) end({ kind: 'failed', reason: t('calculation.restarted') });
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
      fail(t('calculation.silent', { seconds: options.patience }));
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
    ask: <K extends QuestionKind>(question: Question<K>, onShare: (share: number) => void = () => {}) => {
      const key = questionKey(question.kind, question.desk);
      const revision = ++questions;
      open.get(key)?.({ kind: 'superseded' });
      return new Promise<Outcome<K>>((settleOnce) => {
        const loseHeart = () => {
          end({ kind: 'failed', reason: t('calculation.silent', { seconds: options.patience }) });
        };
        let stopPatience = options.timer.after(options.patience, loseHeart);
        const isOpen = () => open.get(key) === end;
        const end = (outcome: Outcome<K>) => {
          stopPatience();
          if (isOpen()) open.delete(key);
          settleOnce(outcome);
        };
        open.set(key, end);
        try {
          transport ??= connect();
          transport
            .ask(question, revision, (share) => {
              if (!isOpen()) return;
              // whoever reports progress is alive
              stopPatience();
              stopPatience = options.timer.after(options.patience, loseHeart);
              onShare(share);
            })
            .then(
              (reply) => {
                if (reply?.revision === revision && isOpen()) end({ kind: 'answer', answer: reply.answer });
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
    drop(kind, desk) {
      const end = open.get(questionKey(kind, desk));
      if (!end) return;
      end({ kind: 'superseded' });
      transport?.drop(kind, desk);
    },
    close() {
      isClosed = true;
      stopFollowing();
      waiting = null;
      giveUpTransport();
    }
  };
}
