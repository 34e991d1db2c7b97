/** Lines of a take-off: which are shown, how they are gathered, and what each costs. */
import type { Takeoff, TakeoffGroup, TakeoffItem, TakeoffLine, TakeoffUnit } from '#analysis/takeoff/results';
import type { Ref } from '#editor/types';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import type { Grouping } from '../../settings';

export interface Row {
  /** No two rows have the same, also where a loop and a circuit have one id. */
  readonly key: string;
  readonly line: TakeoffLine;
  /** Its share of what is paid for its item; null without a price. */
  readonly cost: number | null;
}

export interface Sum {
  readonly amount: number;
  readonly gross: number;
  readonly unit: TakeoffUnit;
}

export interface Group {
  /** Id of a subject, a group of kinds, or an item. */
  readonly key: string;
  readonly rows: readonly Row[];
  /** Null where the lines are counted in different units. */
  readonly sum: Sum | null;
  /** Of the lines that have a price; null where none has. */
  readonly cost: number | null;
  /** Set where all lines of one item stand in the group. */
  readonly item: TakeoffItem | null;
}

/** 'all', 'selected', or a kind and an id: "loop L1". */
export type Filter = 'all' | 'selected' | `loop ${string}` | `circuit ${string}`;

const withCircuit = (site: Site, id: string): readonly string[] => {
  const circuit = site.circuits.find((each) => each.id === id);
  return circuit ? [id, ...loopsIn(circuit)] : [id];
};

/**
 * Ids of what lines must be about to be shown; null for all. A circuit comes with its loops; what is selected comes with the
 * circuits all of whose loops are selected. Where nothing is selected everything is shown.
 */
export function subjectsShown(
  site: Site,
  filter: Filter,
  selection: readonly Ref[]
): ReadonlySet<string> | null {
  if (filter === 'all') return null;
  if (filter === 'selected') {
    if (selection.length === 0) return null;
    const loops = new Set(selection.filter(({ kind }) => kind === 'loop').map(({ id }) => id));
    const whole = site.circuits.filter((circuit) => {
      const own = loopsIn(circuit);
      return own.length > 0 && own.every((id) => loops.has(id));
    });
    return new Set([...selection.map(({ id }) => id), ...whole.map(({ id }) => id)]);
  }
  const at = filter.indexOf(' ');
  const id = filter.slice(at + 1);
  return new Set(filter.startsWith('circuit') ? withCircuit(site, id) : [id]);
}

/** A loop or a circuit that is gone shows everything again. */
export function filterThere(site: Site, filter: Filter): Filter {
  if (filter === 'all' || filter === 'selected') return filter;
  const id = filter.slice(filter.indexOf(' ') + 1);
  const list = filter.startsWith('circuit') ? site.circuits : site.loops;
  return list.some((each) => each.id === id) ? filter : 'all';
}

export function rowsOf({ lines, items }: Takeoff, subjects: ReadonlySet<string> | null): readonly Row[] {
  const byItem = new Map(items.map((each) => [each.item, each]));
  const times = new Map<string, number>();
  return lines.flatMap((line): Row[] => {
    const time = times.get(line.id) ?? 0;
    times.set(line.id, time + 1);
    if (subjects && !subjects.has(line.subject)) return [];
    const { cost, gross } = byItem.get(line.item) ?? { cost: null, gross: 0 };
    const key = time === 0 ? line.id : `${line.id} ${time}`;
    return [{ key, line, cost: cost === null || gross === 0 ? cost : (cost * line.gross) / gross }];
  });
}

export const costOf = (rows: readonly Row[]): number | null =>
  rows.reduce<number | null>((sum, { cost }) => (cost === null ? sum : (sum ?? 0) + cost), null);

export function sumOf(rows: readonly Row[]): Sum | null {
  const [first] = rows;
  if (!first) return null;
  const { unit } = first.line;
  if (rows.some(({ line }) => line.unit !== unit)) return null;
  const add = (of: (line: TakeoffLine) => number) => rows.reduce((sum, { line }) => sum + of(line), 0);
  return { unit, amount: add(({ amount }) => amount), gross: add(({ gross }) => gross) };
}

const KEYS: Readonly<Record<Grouping, (line: TakeoffLine) => string>> = {
  subject: ({ subject }) => subject,
  kind: ({ group }) => group,
  item: ({ item }) => item
};

/** In the order in which the lines name them. */
export function groupsOf(
  rows: readonly Row[],
  grouping: Grouping,
  items: readonly TakeoffItem[]
): readonly Group[] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = KEYS[grouping](row.line);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return [...groups].map(([key, own]) => {
    const item = grouping === 'item' ? items.find((each) => each.item === key) : undefined;
    const sum = sumOf(own);
    const isWhole =
      item !== undefined && sum !== null && Math.abs(sum.gross - item.gross) < 1e-9 * item.gross;
    return { key, rows: own, sum, cost: costOf(own), item: isWhole ? item : null };
  });
}

/** Of the rows of one group of kinds, by the one unit that its figure is told in. */
export const totalOf = (rows: readonly Row[], group: TakeoffGroup, unit: TakeoffUnit): Sum | null =>
  sumOf(rows.filter(({ line }) => line.group === group && line.unit === unit));
