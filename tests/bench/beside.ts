/**
 * What an edit waits for while the worker answers a question: on 24 loops, how long a question goes on before a newer drawing
 * gets its turn, and the frames of a drag in the built page with such a question asked again and again.
 */
import { chromium, type Page } from '@playwright/test';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { createAnswerer, type Asked, type QuestionKind } from '#analysis/questions';
import { keepVariant } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { launchOptions } from '../../src/tooling/browser.mjs';
import { bigSite, withLoopAt } from '../support/big-site';
import { dragAbout, lookAtLoop, openDrawing } from './hand';
import { serve } from './served';

/** Milliseconds of work that the worker gives a question at a time. */
const TURN = 24;
const MOVES = 90;
const ROUNDS = 3;

const compared = (): Site => withLoopAt(keepVariant(bigSite(), 'As it was'), 8, [0.1, 0.2]);

const share = (values: readonly number[], part: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * part))]!;
const ms = (value: number): string => `${value.toFixed(1)} ms`;

/** The drawing has been assessed with all that follows, as on a page; nothing else is known. */
const turnsOf = <K extends QuestionKind>(kind: K, site: Site, asked: Asked<K>): number[] => {
  const means = createMeans();
  const assessor = createAssessor(means);
  while (assessor.prepareNext(site));
  assessor.assess(site, 'prepared');
  while (assessor.followNext(site));
  const steps = createAnswerer(means)(kind, site, asked);
  const turns: number[] = [];
  for (let done = false; !done;) {
    const start = performance.now();
    while (!done && performance.now() - start < TURN) done = steps.next().done ?? false;
    turns.push(performance.now() - start);
  }
  return turns;
};

const measureTurns = (): void => {
  const site = compared();
  const values = Array.from({ length: 60 }, (_, k) => 0.8 + 0.03 * k);
  const report = (what: string, turns: readonly number[]): void => {
    const all = turns.reduce((sum, turn) => sum + turn, 0);
    console.log(
      `${`an edit beside ${what}`.padEnd(58)} waits at most ${ms(Math.max(...turns))}, p95 ${ms(share(turns, 0.95))} ` +
        `(${turns.length} turns, ${all.toFixed(0)} ms in all)`
    );
  };
  report(
    'a comparison of two designs',
    turnsOf('compare-designs', site, { designs: ['V1', null], pass: null })
  );
  report(
    'a sweep of 60 points',
    turnsOf('sweep', site, {
      x: { variable: { kind: 'width', subject: 'L1' }, values },
      family: null,
      designs: null,
      figures: [
        { kind: 'inductance', subject: 'C1' },
        { kind: 'response', subject: 'C1', vehicle: 'car', path: 'worst' }
      ],
      place: { offset_m: 0, along_m: 0 }
    })
  );
  report(
    'a picture of the field',
    turnsOf('draw-field', site, {
      source: { kind: 'circuit', id: 'C1' },
      plane: { kind: 'section', from: [-2.5, 0], to: [2.5, 0], low_m: -0.7, high_m: 1.8 },
      columns: 120,
      rows: 60,
      vehicle: { vehicle: 'lorry', at: [0.3, 0.2], heading: 90 },
      lines: 16
    })
  );
};

interface Timed extends Window {
  /** When each frame began, milliseconds. */
  frameTimes: number[];
}

/** Milliseconds from frame to frame while a loop is dragged; an undo brings it back. */
const framesOfDrag = async (page: Page): Promise<readonly number[]> => {
  // beside the middle, where the field's section has a grip
  await dragAbout(page, { moves: MOVES, pause: 16, from: [90, 60] }, () =>
    page.evaluate(() => {
      const timed = window as unknown as Timed;
      const frames: number[] = (timed.frameTimes = []);
      const note = (time: number) => {
        frames.push(time);
        if (timed.frameTimes === frames) requestAnimationFrame(note);
      };
      requestAnimationFrame(note);
    })
  );
  const frames = await page.evaluate(() => {
    const timed = window as unknown as Timed;
    const frames = timed.frameTimes;
    timed.frameTimes = [];
    return frames;
  });
  await page.mouse.up();
  await page.getByRole('button', { name: /^Undo: Move/ }).click();
  return frames.slice(1).map((time, index) => time - frames[index]!);
};

/** Views under the plan whose questions follow the drawing; the first asks nothing. */
const VIEWS = [
  ['nothing', 'Circuits', null],
  ['a comparison of two designs', 'Compare', 'Designs'],
  ['a sweep', 'Compare', 'Sweep'],
  ['a picture of the field', 'Compare', 'Field']
] as const;

export const measureBeside = async (): Promise<void> => {
  console.log('');
  measureTurns();
  const stop = await serve();
  const browser = await chromium.launch(launchOptions());
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openDrawing(page, compared());
    await lookAtLoop(page, 'Loop 10');
    const all = VIEWS.map((): number[] => []);
    // in turns, so that a machine that is busy for a while is busy for all of them
    for (let round = 0; round < ROUNDS; round++)
      for (const [index, [, view, mode]] of VIEWS.entries()) {
        await page.getByRole('tab', { name: view, exact: true }).click();
        if (mode) await page.getByRole('radio', { name: mode, exact: true }).check({ force: true });
        await page.waitForTimeout(1500);
        all[index]!.push(...(await framesOfDrag(page)));
      }
    const alone = share(all[0]!, 0.95);
    for (const [index, [what]] of VIEWS.entries()) {
      const late = share(all[index]!, 0.95);
      console.log(
        `${`page, a loop of 24 dragged beside ${what}`.padEnd(58)} ${all[index]!.length} frames, median ` +
          `${ms(share(all[index]!, 0.5))}, p95 ${ms(late)}: ratio ${(late / alone).toFixed(2)}, ` +
          `${ms(late - alone)} more (budget 16 ms more)`
      );
    }
  } finally {
    await browser.close();
    stop();
  }
};
