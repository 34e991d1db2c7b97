/** The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. */
import { expose } from 'comlink';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { createAnswerer, type QuestionKind } from '#analysis/questions';
import { speakLanguage } from '#i18n/load';
import type { Language } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Answer, Question, Reply } from './transport';

/** Shared: a vehicle is made ready once, and a drawing solved once. */
const means = createMeans();
const assessor = createAssessor(means);
const answerInSteps = createAnswerer(means);

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

/** Of each kind: an older one that is still open gives up at its next pause. */
const newest = new Map<QuestionKind, number>();

const api = {
  /** Answers at once with what is ready; `prepare` first gets more of it ready. */
  async assess(site: Site, revision: number, prepare: boolean, language: Language): Promise<Answer> {
    await speakLanguage(language, ['analysis']);
    if (prepare) goOn(site);
    return { revision, assessment: assessor.assess(site, 'prepared') };
  },

  /** A turn at a time: an edit that is made meanwhile waits for one turn at most. */
  async ask<K extends QuestionKind>(
    { kind, site, asked }: Question<K>,
    revision: number,
    language: Language,
    onShare: (share: number) => void
  ): Promise<Reply<K> | null> {
    newest.set(kind, revision);
    await speakLanguage(language, ['analysis']);
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
      if (newest.get(kind) !== revision) return null;
    }
  },

  drop(kind: QuestionKind): void {
    newest.delete(kind);
  }
};

export type CalculationApi = typeof api;

expose(api);
