/**
 * The browser's own print, which waits for nothing: the sheet is composed of what is known when it is asked for. Loaded
 * once the page has settled, so that it is there when it is needed.
 */
import { composeSheet } from '#exchange/sheet/compose';
import type { Sheet } from '#exchange/sheet/page';
import { designsOnSheet } from '#exchange/sheet/parts/designs';
import type { Bench } from '#ui/bench';
import { sheetFaces } from '#ui/sheet/faces';
import { layOutInTime } from '#ui/sheet/printed';
import { knownDesigns } from './reckon-designs';

function sheetNow({ assessment, isStale, shown, fileName }: Bench): Sheet | null {
  if (!assessment || isStale) return null;
  try {
    const wish = designsOnSheet(shown);
    const designs = wish && knownDesigns(shown, wish);
    return composeSheet({ site: shown, assessment, file: fileName ?? shown.name, designs });
  } catch {
    // a broken figure must not put the whole page on paper
    return null;
  }
}

/** From here on whatever prints the page prints the sheet. */
export function standReadyToPrint(bench: Bench): void {
  void sheetFaces();
  addEventListener('beforeprint', () => {
    layOutInTime(() => sheetNow(bench));
  });
}
