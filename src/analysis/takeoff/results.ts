/** What a take-off and a cutting plan say. SI; money in the site's own currency; plain data throughout. */
import type { Point } from '#plan/schema';

/** Where a line of the take-off, or a cut, is on the plan. */
export type Place =
  | { readonly kind: 'line'; readonly points: readonly Point[] }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'point'; readonly at: Point };

export const TAKEOFF_KINDS = [
  'loop wire',
  'tail wire',
  'tail slack',
  'twist take-up',
  'lead-in',
  'lead-in slack',
  'loop saw cut',
  'home run saw cut',
  'overcut',
  'core hole',
  'sealant',
  'backer',
  'conduit',
  'pull box',
  'cabinet',
  'splice kit',
  'label',
  'setting up',
  'preparing',
  'sawing',
  'coring',
  'laying',
  'sealing',
  'pulling',
  'splicing',
  'testing',
  'extra'
] as const;
export type TakeoffKind = (typeof TAKEOFF_KINDS)[number];

export type TakeoffUnit = 'm' | 'm3' | 'each' | 'h' | 'day';

export const TAKEOFF_GROUPS = ['wire', 'cable', 'saw cut', 'sealant', 'parts', 'crew', 'extra'] as const;
export type TakeoffGroup = (typeof TAKEOFF_GROUPS)[number];

/** A number in a sentence about how a line came about; whoever shows it writes it in the units and language shown. */
export interface HowValue {
  readonly value: number;
  readonly kind:
    'count' | 'length' | 'smallLength' | 'area' | 'volume' | 'share' | 'time' | 'pace' | 'perMetre';
}

/** A message key under `takeoff.how.` and its numbers. */
export interface How {
  readonly key: string;
  readonly values: Readonly<Record<string, HowValue | string>>;
}

export interface TakeoffLine {
  /** Stable from one edit to the next: `subject/what`, with a further part where a subject has several. */
  readonly id: string;
  /** Id of the loop, circuit, mark, conduit or own line; empty for the site as a whole. */
  readonly subject: string;
  readonly what: TakeoffKind;
  readonly group: TakeoffGroup;
  /** What it is bought as: "wire:awg14", "cable:pair-14", "saw:50x8" (millimetres, deep × wide), "sealant", "crew". */
  readonly item: string;
  /** As the drawing says, without waste. */
  readonly amount: number;
  readonly unit: TakeoffUnit;
  /** Share that is added for waste. */
  readonly waste: number;
  /** With waste: amount × (1 + waste). */
  readonly gross: number;
  readonly how: How;
  readonly places: readonly Place[];
}

/** All lines of one item: what is bought, and what it costs. */
export interface TakeoffItem {
  readonly item: string;
  readonly group: TakeoffGroup;
  readonly unit: TakeoffUnit;
  readonly amount: number;
  readonly gross: number;
  /** What one purchasable unit holds; null where it is not bought in packs. */
  readonly pack: number | null;
  /** Whole packs where the site asks for them, else null. */
  readonly packs: number | null;
  /** What is paid for: whole packs where asked for, else whole pieces of what comes in pieces, else `gross`. */
  readonly bought: number;
  /** For one unit; null where the price book says nothing. */
  readonly price: number | null;
  /** To the hundredth. */
  readonly cost: number | null;
  /** Of copper, kilograms of the amount with waste; null for what is none. */
  readonly copper_kg: number | null;
}

export interface Takeoff {
  readonly lines: readonly TakeoffLine[];
  readonly items: readonly TakeoffItem[];
  readonly currency: string | null;
  /** Sum of the costs that are known. */
  readonly cost: number;
  readonly contingency: number;
  /** cost × (1 + contingency) */
  readonly costWithContingency: number;
  /** Items that are needed and have no price. */
  readonly unpriced: readonly string[];
  /** Of the crew, on the site. */
  readonly hours: number;
  /** What the figures leave out; message keys under `takeoff.caution.`. */
  readonly cautions: readonly How[];
}

/** A point as a tape finds it: along the baseline from its start, and off it (positive to the left). Metres. */
export interface SetOut {
  readonly station: number;
  readonly offset: number;
}

export type CutKind = 'side' | 'shared side' | 'corner cut' | 'round' | 'home run';

export interface Cut {
  readonly id: string;
  /** From 1, in the order of sawing. */
  readonly order: number;
  /** The loop that it is for; of a shared slot the one that it is sawn with. */
  readonly loop: string;
  /** Further loops whose wires lie in the same slot. */
  readonly sharedWith: readonly string[];
  readonly kind: CutKind;
  readonly from: Point;
  /** Of a round cut both ends are where its wires leave it, or its point at +x. */
  readonly to: Point;
  /** Of a round cut. */
  readonly circle: { readonly centre: Point; readonly radius: number } | null;
  /** As drawn, without what runs past the ends. */
  readonly length: number;
  readonly depth: number;
  readonly width: number;
  /** How far it runs past its ends, 0 where a hole is cored or nothing is wanted. */
  readonly overcut: { readonly from: number; readonly to: number };
  /** Null without a baseline. Of a round cut both are its middle: from there it is drawn by its radius. */
  readonly setOut: { readonly from: SetOut; readonly to: SetOut } | null;
}

export interface CoreHole {
  readonly loop: string;
  readonly at: Point;
  readonly diameter: number;
  readonly depth: number;
  readonly setOut: SetOut | null;
}

export interface CuttingPlan {
  /** Name of the lane or mark that is measured from; null where there is none. */
  readonly baseline: { readonly name: string; readonly points: readonly Point[] } | null;
  readonly cuts: readonly Cut[];
  readonly holes: readonly CoreHole[];
  /** Home runs whose length was typed: they are sawn, but nobody knows where. Part of `totals`. */
  readonly unplaced: readonly {
    readonly loop: string;
    readonly length: number;
    readonly depth: number;
    readonly width: number;
  }[];
  /**
   * What the blade travels in the road, by depth and width; the deepest first. `length` as drawn, `overcut` what runs past
   * the ends: the blade's way is their sum.
   */
  readonly totals: readonly {
    readonly depth: number;
    readonly width: number;
    readonly length: number;
    readonly overcut: number;
  }[];
  /** What the figures leave out; message keys under `takeoff.caution.`. */
  readonly cautions: readonly How[];
}
