/** Findings of designs side by side: which design has which, and how grave it is there. */
import type { Finding, Severity } from '../results';
import type { DesignResults } from './results';
import type { Mark } from './rows';

export interface FindingRow {
  /** Unique among the rows. */
  readonly key: string;
  readonly code: string;
  readonly subject: string;
  /** By design; null where it is not found. */
  readonly findings: readonly (Finding | null)[];
  readonly differs: boolean;
  /** By design, as against the first, which is always null. */
  readonly marks: readonly Mark[];
}

const RANK: Readonly<Record<Severity, number>> = { note: 1, caution: 2, problem: 3 };
const rankOf = (finding: Finding | null): number => (finding ? RANK[finding.severity] : 0);

/** What it says without its figures, which differ between designs: tells findings of one kind about one thing apart. */
const gist = ({ message }: Finding): string => message.replace(/[\d.,\u2009\u00a0]+/g, '');

const sameThing = ({ code, subject }: Finding): string => JSON.stringify([code, subject]);

/** In the order in which they come up, the gravest of the first design first. */
export function findingRows(results: readonly DesignResults[]): readonly FindingRow[] {
  const several = new Set(
    results.flatMap(({ findings }) => {
      const keys = findings.map(sameThing);
      return keys.filter((key, index) => keys.indexOf(key) !== index);
    })
  );
  const found = new Map<string, (Finding | null)[]>();
  results.forEach(({ findings }, index) => {
    for (const finding of findings) {
      const thing = sameThing(finding);
      const key = several.has(thing) ? JSON.stringify([thing, gist(finding)]) : thing;
      const row = found.get(key) ?? results.map(() => null);
      row[index] ??= finding;
      found.set(key, row);
    }
  });
  return [...found].map(([key, row]): FindingRow => {
    const { code, subject } = row.find((finding) => finding !== null)!;
    const first = rankOf(row[0] ?? null);
    return {
      key,
      code,
      subject,
      findings: row,
      differs: row.some((finding) => rankOf(finding) !== first),
      marks: row.map((finding, index): Mark => {
        const rank = rankOf(finding);
        return index === 0 ? null : rank === first ? 'same' : rank < first ? 'better' : 'worse';
      })
    };
  });
}
