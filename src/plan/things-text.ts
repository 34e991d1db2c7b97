/**
 * Things on their way between windows, as text: a whole site document with nothing in it but them and the marks that their
 * ways lead to, so that it is read through the same door as a file; and a list that says which of it was meant.
 */
import { t } from '#i18n/message';
import { z } from 'zod';
import { extractThings } from './edits/copies';
import type { Thing } from './edits/thing';
import { readSite, writeSite, type Problem } from './read';
import { parseJson } from './reading/parse-json';
import { problem } from './reading/problem';
import { scan } from './reading/scan';
import type { Mark, Site } from './schema';

export interface ThingsRead {
  readonly site: Site;
  readonly things: readonly Thing[];
  /** Marks of the plan that they come from, where a way can still lead to. */
  readonly standing: readonly Mark[];
}

export type ThingsReading =
  | ({ readonly kind: 'things' } & ThingsRead)
  /** Not made here: no matter of ours. */
  | { readonly kind: 'foreign' }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

const FORMAT = 'kerfline-things';
const VERSION = 1;
/** A text of ours says so at its beginning. */
const BEGINNING = /^\s*\{\s*"format"\s*:\s*"kerfline-things"/;

const envelope = z.object({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  things: z
    .array(
      z.object({
        kind: z.enum(['loop', 'lane', 'mark', 'steel', 'path', 'probe', 'underlay']),
        id: z.string().max(80)
      })
    )
    .max(10_000),
  site: z.record(z.string(), z.unknown())
});

/** Marks that ways of these loops and circuits lead to. */
function ledTo({ loops, circuits }: Site): ReadonlySet<string> {
  const ids = loops.flatMap(({ tail }) => (tail.route ? [tail.route.to] : []));
  const ends = circuits.flatMap(({ leadIn: { route } }) => (route ? [route.from, route.to] : []));
  return new Set([...ids, ...ends]);
}

/** `site`: only what was copied, as `extractThings` gives it. */
export function writeThings({ site, things, standing }: ThingsRead): string {
  const led = ledTo(site);
  const own = new Set(site.marks.map(({ id }) => id));
  const marks = [...site.marks, ...standing.filter(({ id }) => led.has(id) && !own.has(id))];
  const document = writeSite({ ...site, marks });
  const list = things.map(({ kind, id }) => ({ kind, id }));
  return `{"format": "${FORMAT}", "version": ${VERSION}, "things": ${JSON.stringify(list)}, "site": ${document}}`;
}

const refused = (...problems: readonly Problem[]): ThingsReading => ({ kind: 'refused', problems });

/** Never throws; all or nothing, as for a file. */
export function readThings(text: string): ThingsReading {
  if (!BEGINNING.test(text)) return { kind: 'foreign' };
  const parsed = parseJson(text);
  if (!parsed.ok) return refused(parsed.problem);
  const { unsafe } = scan(parsed.value);
  if (unsafe.length > 0) return refused(...unsafe);
  const whole = envelope.safeParse(parsed.value);
  if (!whole.success) return refused(problem([], t('paste.otherVersion'), t('paste.thisVersion')));
  const reading = readSite(JSON.stringify(whole.data.site));
  if (!reading.ok) return refused(...reading.problems);
  const things = whole.data.things;
  const site = extractThings(reading.site, things);
  return { kind: 'things', site, things: thingsIn(site), standing: reading.site.marks };
}

/** Everything that can be pointed at in it. */
function thingsIn(site: Site): Thing[] {
  const named = (kind: Thing['kind'], list: readonly { readonly id: string }[]): Thing[] =>
    list.map(({ id }) => ({ kind, id }));
  return [
    ...named('underlay', site.underlays),
    ...named('lane', site.lanes),
    ...named('mark', site.marks),
    ...named('steel', site.steel),
    ...named('loop', site.loops),
    ...named('path', site.paths),
    ...site.probes.map((_, index): Thing => ({ kind: 'probe', id: String(index) }))
  ];
}
