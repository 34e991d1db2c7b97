/** Pages of a sheet as plain drawings: millimetres from the upper left corner, y downwards. */
import type { Drawing } from '#scenes/drawing';
import type { Site } from '#plan/schema';
import type { SheetScale, StatedSheet } from '#plan/catalogue/sheet';

/** What is put on paper: the sheet, the commissioning record, the empty form for it. */
export type Paper = 'sheet' | 'record' | 'form';

export interface Page {
  readonly width: number;
  readonly height: number;
  /** In words, for whoever cannot see it. */
  readonly title: string;
  readonly drawings: readonly Drawing[];
}

export type Sheet =
  | {
      readonly kind: 'pages';
      readonly pages: readonly Page[];
      /** Of the plan; where no plan is wanted, the one that it would have. */
      readonly scale: SheetScale;
      readonly site: Site;
    }
  /** Does not fit. */
  | {
      readonly kind: 'unfit';
      readonly message: string;
      /** The smallest paper on which the wanted scale would fit; null where none is large enough. */
      readonly paper: Pick<StatedSheet, 'paper' | 'orientation'> | null;
      /** The largest scale that fits on the wanted paper; null where none does. */
      readonly scale: SheetScale | null;
      /** Where both are null: another paper and a smaller scale that fit together. */
      readonly together: (Pick<StatedSheet, 'paper' | 'orientation'> & { readonly scale: SheetScale }) | null;
    };
