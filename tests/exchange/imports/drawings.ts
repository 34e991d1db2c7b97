/** Drawings written by hand, group by group, as their format's published reference has them. */
import { unwatched } from '#exchange/job';
import type { Drawing } from '#exchange/imports/dxf/drawing';
import { readDxf } from '#exchange/imports/dxf/read';

export type Groups = readonly (readonly [code: number, value: string | number])[];

const written = (groups: Groups): string => groups.map(([code, value]) => `${code}\n${value}\n`).join('');

export interface Parts {
  readonly things?: readonly Groups[];
  readonly blocks?: readonly { readonly name: string; readonly base?: readonly [number, number]; readonly things: readonly Groups[] }[]; // prettier-ignore
  readonly units?: number;
  readonly version?: string;
  readonly layers?: readonly Groups[];
}

export function drawing({ things = [], blocks = [], units, version = 'AC1015', layers = [] }: Parts): string {
  const section = (name: string, groups: Groups): Groups => [
    [0, 'SECTION'],
    [2, name],
    ...groups,
    [0, 'ENDSEC']
  ];
  return written([
    ...section('HEADER', [[9, '$ACADVER'], [1, version], ...(units === undefined ? [] : ([[9, '$INSUNITS'], [70, units]] as const))]), // prettier-ignore
    ...section('TABLES', [[0, 'TABLE'], [2, 'LAYER'], [70, layers.length], ...layers.flatMap((layer): Groups => [[0, 'LAYER'], ...layer]), [0, 'ENDTAB']]), // prettier-ignore
    ...section('BLOCKS', blocks.flatMap(({ name, base = [0, 0], things: own }): Groups => [[0, 'BLOCK'], [8, '0'], [2, name], [70, 0], [10, base[0]], [20, base[1]], ...own.flat(), [0, 'ENDBLK']])), // prettier-ignore
    ...section('ENTITIES', things.flat()),
    [0, 'EOF']
  ]);
}

export const line = (x1: number, y1: number, x2: number, y2: number, layer = '0'): Groups => [
  [0, 'LINE'],
  [8, layer],
  [10, x1],
  [20, y1],
  [11, x2],
  [21, y2] // prettier-ignore
];

export const insert = (block: string, x: number, y: number, more: Groups = [], layer = '0'): Groups => [
  [0, 'INSERT'],
  [8, layer],
  [2, block],
  [10, x],
  [20, y],
  ...more // prettier-ignore
];

export const read = (text: string): Promise<Drawing> => readDxf(new TextEncoder().encode(text), unwatched());

/** Points of every path. */
export const pathsOf = async (text: string) => (await read(text)).paths.map(({ points }) => points);
