/** The parts of a sheet beside its plan, in the order in which they follow each other. */
import type { CuttingPlan } from '#analysis/takeoff/results';
import type { SheetPart } from '#plan/catalogue/sheet';
import type { ExportSource } from '../../files/exported';
import type { Block } from '../layout/block';
import { cautions, remarks } from './cautions';
import { sections } from './section';
import { cutting, loops, quantities, readings, settings } from './tables';
import { wiring } from './wiring';

export interface PartsSource extends ExportSource {
  /** Null where it is not wanted. */
  readonly cutting: CuttingPlan | null;
}

type Blocks = (source: PartsSource) => readonly Block[];

/** First what is cut, then what is wired and read, then what is bought. */
const BLOCKS: readonly (readonly [SheetPart, Blocks])[] = [
  ['loops', loops],
  ['cutting', ({ site, cutting: plan }) => (plan ? cutting(site, plan) : [])],
  ['section', ({ site }) => [sections(site)]],
  ['wiring', ({ site }) => [wiring(site)]],
  ['readings', readings],
  ['settings', settings],
  ['quantities', quantities]
];

/** The user's remarks belong to every sheet. */
export const blocksOf = (source: PartsSource, parts: readonly SheetPart[]): readonly Block[] => [
  ...BLOCKS.filter(([part]) => parts.includes(part)).flatMap(([, blocks]) => blocks(source)),
  remarks(source.site),
  ...(parts.includes('cautions') ? [cautions()] : [])
];
