/**
 * Readings held against what is expected of them, from the worker: once for a drawing, however many look at it at the same
 * time, since of each kind of question only the newest is answered.
 */
import type { AnswerTo } from '#analysis/questions';
import { Unfit, type Reckoned } from '#exchange/files/exported';
import type { Job } from '#exchange/job';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Bench } from '#ui/bench';

type Asking = Pick<Bench, 'ask' | 'shown'>;
/** Asked of a drawing and nothing else. */
type OfReadings = Exclude<Reckoned, 'compare-designs'>;

interface Known<K extends OfReadings> {
  readonly site: Site;
  /** Null for a question that a newer one ended. */
  readonly answer: Promise<AnswerTo<K> | null>;
}

/** Of each kind the newest. */
const known: { [K in OfReadings]?: Known<K> } = {};

/** On these no figure of a meter depends. */
const APART = new Set<string>([
  'name',
  'displayUnits',
  'layers',
  'estimate',
  'sheet',
  'underlays',
  'traffic',
  'probes',
  'variants',
  'variant'
]);

const withoutRecord = ({ fieldCheck }: Site): string => JSON.stringify({ ...fieldCheck, record: undefined });

/** What the record says of people and acceptance moves no figure: who fills it in waits for nothing. */
function isAlike(a: Site, b: Site): boolean {
  if (a === b) return true;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof Site>;
  for (const key of keys) if (key !== 'fieldCheck' && !APART.has(key) && a[key] !== b[key]) return false;
  return a.fieldCheck === b.fieldCheck || withoutRecord(a) === withoutRecord(b);
}

async function asked<K extends OfReadings>(bench: Asking, kind: K): Promise<AnswerTo<K> | null> {
  const outcome = await bench.ask(kind, {});
  if (outcome.kind === 'failed') throw new Unfit(t('exports.noFigures'));
  return outcome.kind === 'answer' ? outcome.answer : null;
}

/** Of the site shown. Null where another site is shown by the time it is answered. */
export function reckonShown<K extends OfReadings>(bench: Asking, kind: K): Promise<AnswerTo<K> | null> {
  const site = bench.shown;
  const newest = known[kind];
  if (newest && isAlike(newest.site, site)) return newest.answer;
  const answer = asked(bench, kind);
  const own = { site, answer };
  Object.assign(known, { [kind]: own });
  const forget = () => {
    if (known[kind] === own) Reflect.deleteProperty(known, kind);
  };
  // what was not answered is asked again
  answer.then((found) => {
    if (found === null) forget();
  }, forget);
  return answer;
}

/** For a file of `site`. Rejects as `Reckon` does, and with `Unfit` where the drawing was changed meanwhile. */
export async function reckonFor<K extends OfReadings>(
  bench: Asking,
  kind: K,
  site: Site,
  { signal }: Job
): Promise<AnswerTo<K>> {
  const ended = new Promise<never>((_, reject) => {
    signal.addEventListener(
      'abort',
      () => {
        reject(signal.reason as Error);
      },
      { once: true }
    );
  });
  // nobody may be listening any more by the time it is ended
  ended.catch(() => {});
  for (;;) {
    signal.throwIfAborted();
    if (!isAlike(bench.shown, site)) throw new Unfit(t('exports.changedMeanwhile'));
    const answer = await Promise.race([reckonShown(bench, kind), ended]);
    if (answer !== null) return answer;
  }
}
