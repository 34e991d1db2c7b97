/**
 * The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. What a drawing's first readout
 * does not need is brought when a drawing or a question first asks for it.
 */
import { expose } from 'comlink';
import { createAssessorWith } from '#analysis/assessor';
import type { LaterMeans } from '#analysis/later';
import { listedOf } from '#analysis/listed';
import { createMeans } from '#analysis/means';
import type { Answerer, QuestionKind } from '#analysis/questions';
import { speakLanguage } from '#i18n/load';
import type { Language } from '#i18n/message';
import type { Site } from '#plan/schema';
import { questionKey, type Answer, type Question, type Reply } from './transport';

/** Shared: a vehicle is made ready once, and a drawing solved once. */
const means = createMeans();
let later: LaterMeans | null = null;
const assessor = createAssessorWith(means, () => later);

/** Once, however often it is asked for; again after a failure. */
const once = <T>(bring: () => Promise<T>): (() => Promise<T>) => {
  let brought: Promise<T> | null = null;
  return () =>
    (brought ??= bring().catch((problem: unknown) => {
      brought = null;
      throw problem;
    }));
};

const answererOnce = once<Answerer>(async () => (await import('#analysis/questions')).createAnswerer(means));

/** Milliseconds of work after which the newest drawing gets its turn. */
const TURN = 24;

/** One vehicle made ready, which takes long, or as much of what follows as fits a turn. */
const goOn = (site: Site): void => {
  if (assessor.prepareNext(site)) return;
  const start = performance.now();
  while (performance.now() - start < TURN && assessor.followNext(site));
};

/** Lets messages that wait be heard. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Of each kind and desk: an older one that is still open gives up at its next pause. */
const newest = new Map<string, number>();

const api = {
  /** Answers at once with what is ready; `prepare` first gets more of it ready. */
  async assess(site: Site, revision: number, prepare: boolean, language: Language): Promise<Answer> {
    await speakLanguage(language, ['analysis']);
    if (prepare) {
      goOn(site);
      if (assessor.isWaiting(site)) later ??= (await import('#analysis/later')).laterMeans(means);
    }
    return { revision, assessment: listedOf(assessor.assess(site, 'prepared')) };
  },

  /** A turn at a time: an edit that is made meanwhile waits for one turn at most. */
  async ask<K extends QuestionKind>(
    { kind, desk, site, asked }: Question<K>,
    revision: number,
    language: Language,
    onShare: (share: number) => void
  ): Promise<Reply<K> | null> {
    const key = questionKey(kind, desk);
    newest.set(key, revision);
    await speakLanguage(language, ['analysis']);
    const answerInSteps = await answererOnce();
    const steps = answerInSteps(kind, site, asked);
    for (;;) {
      const start = performance.now();
      let share: number | null = null;
      while (performance.now() - start < TURN) {
        const step = steps.next();
        if (step.done) return { revision, answer: step.value };
        if (typeof step.value === 'number') share = step.value;
      }
      if (share !== null) onShare(share);
      await pause();
      if (newest.get(key) !== revision) return null;
    }
  },

  drop(kind: QuestionKind, desk?: string): void {
    newest.delete(questionKey(kind, desk));
  }
};

export type CalculationApi = typeof api;

expose(api);
