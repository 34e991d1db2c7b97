/** How a sheet is laid out where the site states nothing, and how large papers are. */
import { SHEET_PARTS, type PAPERS, type SCALES } from '../schema/sheet';
import type { SheetLayout, Site } from '../schema';

export type Paper = (typeof PAPERS)[number];
export type SheetScale = (typeof SCALES)[number];
export type SheetPart = (typeof SHEET_PARTS)[number];

/** Millimetres, upright. A4 and A3: ISO 216. Letter 8.5 × 11 in and tabloid 11 × 17 in: ANSI/ASME Y14.1 A and B. */
const PAPER_SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  tabloid: { width: 279.4, height: 431.8 }
};

export interface StatedSheet {
  readonly paper: Paper;
  readonly orientation: 'portrait' | 'landscape';
  /** Null: the largest that fits. */
  readonly scale: SheetScale | null;
  readonly parts: readonly SheetPart[];
}

/** What the site states, and the usual where it states nothing: the paper follows the units shown. */
export function sheetOf({ sheet, displayUnits }: Pick<Site, 'sheet' | 'displayUnits'>): StatedSheet {
  const stated: SheetLayout = sheet ?? {};
  return {
    paper: stated.paper ?? (displayUnits === 'metric' ? 'A3' : 'tabloid'),
    orientation: stated.orientation ?? 'landscape',
    scale: stated.scale ?? null,
    parts: stated.parts ?? SHEET_PARTS
  };
}

/** Millimetres, as it lies. */
export function paperSize({ paper, orientation }: Pick<StatedSheet, 'paper' | 'orientation'>): {
  readonly width: number;
  readonly height: number;
} {
  const { width, height } = PAPER_SIZES[paper];
  return orientation === 'portrait' ? { width, height } : { width: height, height: width };
}
