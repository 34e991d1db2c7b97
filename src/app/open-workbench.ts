/** What happens before the page can be shown: find a slot for this tab, recover its site, or take the demo. */
import { version } from '$app/environment';
import { languageOf } from '#i18n/choose';
import { speakFirstWords } from '#i18n/first-words';
import { speakLanguage } from '#i18n/load';
import { browserFileHost } from '#storage/browser-file-host';
import { createDatabaseStore } from '#storage/database';
import { createDraftStore } from '#storage/drafts';
import { leaveLastWords, takeLastWords } from '#storage/last-words';
import { askToPersist } from '#storage/persistence';
import { createStoredValue, type TextStorage } from '#storage/stored-value';
import { createTenancy } from '#storage/tenancy';
import { withWords } from '#ui/parts/with-words';
import { readSettings } from '#ui/settings';
import { connectWorker } from '#workers/connect';
import { FORMAT, freshOwner, type Desk } from './enter-slot';
import { listen } from './listen';
import { retireReleases } from './retire';
import { findStart, freshStart } from './start';
import { Workbench } from './workbench.svelte';

function channel(): BroadcastChannel | null {
  return 'BroadcastChannel' in window ? new BroadcastChannel('kerfline') : null;
}

/** Seconds. Whoever prints by the browser's own menu must find a sheet; nobody waits for what that takes. */
const STAND_READY_AFTER = 5;

function standReadyToPrint(bench: Workbench): void {
  setTimeout(() => {
    withWords(() => import('./printing'))().then(
      (printing) => {
        printing.standReadyToPrint(bench);
      },
      // without it the page itself is printed
      () => {}
    );
  }, STAND_READY_AFTER * 1000);
}

/** The address without what was only an order to the page. */
function clearAddress(): void {
  history.replaceState(history.state, '', location.pathname + location.search);
}

/** `asked`: the address's search parameters; `safe` starts without reading anything that is stored. */
export async function openWorkbench(asked: URLSearchParams): Promise<Workbench> {
  if (asked.has('fresh')) {
    await retireReleases();
    location.replace(location.pathname);
    // The page is about to go.
    await new Promise(() => {});
  }
  const isSafe = asked.has('safe');
  const storage = (): TextStorage | null => (isSafe ? null : localStorage);
  const settings = createStoredValue('kerfline settings', readSettings, storage);
  const language = languageOf(settings.get().language, navigator.languages);
  document.documentElement.lang = language;
  speakFirstWords(language);
  await speakLanguage(language, ['page']);

  let bench: Workbench | null = null;
  const store = createDatabaseStore();
  const desk: Desk = {
    store,
    writer: { owner: freshOwner(), format: FORMAT },
    tenancy: createTenancy({
      locks: 'locks' in navigator ? navigator.locks : null,
      channel: channel(),
      onAsked: (slot) => void bench?.keeping.letGo(slot),
      onLost: (slot) => bench?.keeping.lost(slot)
    })
  };
  const tabSlot = createStoredValue<string | null>(
    'kerfline tab',
    (found) => (typeof found === 'string' ? found : null),
    () => (isSafe ? null : sessionStorage)
  );
  const lastWords = () => (isSafe ? null : localStorage);
  const takeWords = () => takeLastWords(lastWords, store);
  await takeWords();
  const start = isSafe ? freshStart(desk) : await findStart(desk, tabSlot.get());
  const opened = new Workbench({
    ...desk,
    start,
    tabSlot,
    takeLastWords: takeWords,
    settings,
    drafts: createDraftStore(lastWords, Date.now),
    files: browserFileHost,
    connect: connectWorker,
    version
  });
  bench = opened;
  async function openLink() {
    const { hash } = location;
    if (!hash.startsWith('#site') && hash.length < 60) return;
    await opened.keeping.openLink(hash);
    clearAddress();
  }
  await openLink();
  listen(window, 'hashchange', () => void openLink());

  const stopWaiting = opened.editor.subscribe(({ revision }) => {
    if (revision === 0) return;
    stopWaiting();
    askToPersist();
  });
  listen(window, 'pagehide', () => {
    // What stands in a field and was not entered yet counts as it does for whoever leaves the field.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    for (const last of opened.keeping.unsaved()) leaveLastWords(lastWords, last, desk.writer);
    void opened.flush();
  });
  // the browser's languages, not ours
  listen(window, 'languagechange', () => void opened.followLanguage());
  listen(document, 'visibilitychange', () => {
    if (document.visibilityState === 'hidden') void opened.flush();
  });
  standReadyToPrint(opened);
  return opened;
}
