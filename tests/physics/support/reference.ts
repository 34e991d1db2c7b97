import { readFileSync } from 'node:fs';

/** Values that were computed without any code of ours; `generator` is the script beside the file that made them. */
export interface Reference<Case> {
  readonly source: string;
  readonly generator: string;
  readonly tolerance: number;
  readonly cases: readonly Case[];
}

export const referenceOf = <Case>(name: string): Reference<Case> =>
  JSON.parse(
    readFileSync(new URL(`../../reference/${name}.json`, import.meta.url), 'utf8')
  ) as Reference<Case>;

export const relativeError = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

/** Cases of one kind: files hold several kinds of row. */
export const ofKind = <Case extends { readonly kind: string }, Kind extends Case['kind']>(
  cases: readonly Case[],
  kind: Kind
): Extract<Case, { kind: Kind }>[] =>
  cases.filter((each): each is Extract<Case, { kind: Kind }> => each.kind === kind);
