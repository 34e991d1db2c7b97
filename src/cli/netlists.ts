/** The netlists that a command asks for, or why there are none. */
import { netlistOf } from '#exchange/netlist';
import type { OpenedSite } from './sites';

type Netlists =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problems: readonly string[] };

/** Of every circuit of every file, or of the one that is named; one after the other, each closed by `.end`. */
export const netlistsOf = (sites: readonly OpenedSite[], only: string | null): Netlists => {
  const found = sites.map(({ file, site }) => {
    const ids = site.circuits.map(({ id }) => id).filter((id) => only === null || id === only);
    const netlists = ids.flatMap((id) => netlistOf(site, id) ?? []);
    if (netlists.length > 0) return { text: netlists.join('\n'), problem: null };
    const what = only === null ? 'no circuit' : `no circuit ${JSON.stringify(only)}`;
    return { text: '', problem: `${file}: ${what} that can be wound` };
  });
  const problems = found.flatMap(({ problem }) => problem ?? []);
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, text: found.map(({ text }) => text).join('\n') };
};
