/**
 * The browser's own print, which waits for nothing: the sheet is composed of what is known when it is asked for, and what
 * takes long is reckoned before anybody asks. Loaded once the page has settled, so that it is there when it is needed.
 */
import { composeSheet } from '#exchange/sheet/compose';
import type { Sheet } from '#exchange/sheet/page';
import { designsOnSheet } from '#exchange/sheet/parts/designs';
import type { Site } from '#plan/schema';
import type { Bench } from '#ui/bench';
import { sheetFaces } from '#ui/sheet/faces';
import { layOutInTime } from '#ui/sheet/printed';
import { knownDesigns, reckonDesigns } from './reckon-designs';
import { settled } from './settled';

/** Null while something that it shows is not known: a sheet with a gap is none. */
export function sheetNow({
  assessment,
  isStale,
  shown,
  fileName
}: Pick<Bench, 'assessment' | 'isStale' | 'shown' | 'fileName'>): Sheet | null {
  if (!assessment || isStale) return null;
  try {
    const wish = designsOnSheet(shown);
    const designs = wish && knownDesigns(shown, wish);
    if (wish && !designs) return null;
    return composeSheet({ site: shown, assessment, file: fileName ?? shown.name, designs });
  } catch {
    // a broken figure must not put the whole page on paper
    return null;
  }
}

/** Seconds without an edit before designs are reckoned for a sheet that nobody has asked for yet. */
const REST = 2;

type Ahead = Pick<
  Bench,
  'editor' | 'assessment' | 'isStale' | 'shown' | 'fileName' | 'calculation' | 'ask' | 'dropQuestion'
>;

/** Keeps the designs known that the sheet compares. Never while a gesture is in hand; a newer drawing ends an older one's. */
export function reckonAhead(bench: Ahead): void {
  let last: Site | null = null;
  let control = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function reckon(drawn: Site, signal: AbortSignal): Promise<void> {
    const { site } = await settled(bench, { signal });
    if (site !== drawn) {
      // a gesture has begun: what comes of it is looked at anew
      last = null;
      return;
    }
    const wish = designsOnSheet(site);
    if (wish) await reckonDesigns(bench, wish, site, { signal, onShare: () => {} });
  }

  function follow(drawn: Site): void {
    if (drawn === last) return;
    last = drawn;
    control.abort();
    clearTimeout(timer);
    if (drawn.sheet?.comparesDesigns !== true) return;
    const { signal } = (control = new AbortController());
    timer = setTimeout(() => {
      // who prints is told what is missing
      reckon(drawn, signal).catch(() => {});
    }, REST * 1000);
  }

  bench.editor.subscribe(({ site }) => {
    follow(site);
  });
  follow(bench.editor.state.site);
}

/** From here on whatever prints the page prints the sheet. */
export function standReadyToPrint(bench: Bench): void {
  void sheetFaces();
  reckonAhead(bench);
  addEventListener('beforeprint', () => {
    layOutInTime(() => sheetNow(bench));
  });
}
