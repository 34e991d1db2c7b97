/** What happens before the page can be shown: find a slot for this tab, recover its site, or take the demo. */
import { version } from '$app/environment';
import { languageOf } from '#i18n/choose';
import { speakFirstWords } from '#i18n/first-words';
import { loadMessages, speakLanguage } from '#i18n/load';
import { demoSite } from '#plan/demo';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { browserFileHost } from '#storage/browser-file-host';
import { createDatabaseStore } from '#storage/database';
import { leaveLastWords, takeLastWords } from '#storage/last-words';
import { askToPersist } from '#storage/persistence';
import { recover, type Recovery } from '#storage/recovery';
import { keptStates, type StateStore } from '#storage/states';
import { createStoredValue, type TextStorage } from '#storage/stored-value';
import { claimSlot, type SlotClaim } from '#storage/tab-slot';
import { readSettings } from '#ui/settings';
import { connectWorker } from '#workers/connect';
import { listen } from './listen';
import { Workbench } from './workbench.svelte';

const NOTHING: Recovery<Site> = { found: null, aside: [], refusal: null };

const freshSlot = (): string => `slot ${Date.now()} ${Math.random().toString(36).slice(2, 8)}`;

const readKept = (text: string) => {
  const reading = readSite(text);
  return reading.ok
    ? { document: reading.site }
    : { reason: reading.problems.map(({ message }) => message).join(' ') };
};

/** Rejects nothing: a store that cannot be read has no newest slot. */
async function newestSlot(store: StateStore): Promise<string | null> {
  try {
    return (await keptStates(store))[0]?.slot ?? null;
  } catch {
    return null;
  }
}

/** `isSafe`: the page was asked to start without reading anything that is stored. */
export async function openWorkbench(isSafe: boolean): Promise<Workbench> {
  const storage = (): TextStorage | null => (isSafe ? null : localStorage);
  const settings = createStoredValue('kerfline settings', readSettings, storage);
  const language = languageOf(settings.get().language, navigator.languages);
  document.documentElement.lang = language;
  speakFirstWords(language);
  await speakLanguage(language, ['page']);
  void loadMessages(language, ['views']);
  const store = createDatabaseStore();
  const tabSlot = createStoredValue<string | null>(
    'kerfline tab',
    (found) => (typeof found === 'string' ? found : null),
    () => (isSafe ? null : sessionStorage)
  );
  const lastWords = () => (isSafe ? null : localStorage);
  await takeLastWords(lastWords, store);
  const claim: SlotClaim = isSafe
    ? { slot: freshSlot(), recoverFrom: null }
    : await claimSlot({
        locks: 'locks' in navigator ? navigator.locks : null,
        remembered: tabSlot.get(),
        newest: await newestSlot(store),
        fresh: freshSlot
      });
  tabSlot.set(claim.slot);

  const recovery =
    claim.recoverFrom === null ? NOTHING : await recover(store, claim.recoverFrom, readKept, Date.now);
  const bench = new Workbench({
    site: recovery.found?.document ?? demoSite(),
    recoveredFrom: recovery.found?.state.savedAt ?? null,
    salvage: recovery.aside,
    store,
    slot: claim.slot,
    settings,
    files: browserFileHost,
    connect: connectWorker,
    version
  });
  const stopWaiting = bench.editor.subscribe(({ revision }) => {
    if (revision === 0) return;
    stopWaiting();
    askToPersist();
  });
  listen(window, 'pagehide', () => {
    const last = bench.unsaved();
    if (last) leaveLastWords(lastWords, last);
    void bench.flush();
  });
  // the browser's languages, not ours
  listen(window, 'languagechange', () => void bench.followLanguage());
  listen(document, 'visibilitychange', () => {
    if (document.visibilityState === 'hidden') void bench.flush();
  });
  return bench;
}
