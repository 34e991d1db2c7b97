/** Which file the open site has, whether the file has all of it, and since when work is in no file. */
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { missingLike } from '#plan/underlays';
import { digestOf } from '#storage/digest';
import type { FileHandle } from '#storage/files';
import type { KeptFile, SiteRecord, StateStore, Writer } from '#storage/states';
import type { SiteFile } from '#ui/keeping';

/** Milliseconds of work in no file, after which a reminder is due. */
const REMINDER_AGE = 24 * 3600 * 1000;

type Recorded = Pick<SiteRecord, 'slot' | 'file' | 'unfiledSince' | 'isReminded'>;

export class FileRecord {
  readonly #store: StateStore;
  readonly #writer: Writer;
  #slot = '';
  #file = $state.raw<KeptFile | null>(null);
  /** The site as its file has it, told by identity: undo leads back to it. */
  #filed = $state.raw<Site | null>(null);
  #isDue = $state.raw(false);
  #unfiledSince: number | null = null;
  #isReminded = false;

  constructor(store: StateStore, writer: Writer) {
    this.#store = store;
    this.#writer = writer;
  }

  get handle(): FileHandle | null {
    return this.#file?.handle ?? null;
  }
  get isReminderDue(): boolean {
    return this.#isDue;
  }

  shown(site: Site): SiteFile | null {
    return this.#file && { name: this.#file.name, isBehind: site !== this.#filed };
  }

  /**
   * Whether a file's text is what the file was last read or written with, be it by an older release, and but for pictures
   * that `site` misses: those are taken over from the file before it is written.
   */
  knows(text: string, site: Site): boolean {
    const digest = this.#file?.digest;
    if (digestOf(text) === digest) return true;
    const reading = readSite(text);
    return reading.ok && digestOf(writeSite(missingLike(reading.site, site))) === digest;
  }

  begin({ slot, file, unfiledSince, isReminded }: Recorded, site: Site): void {
    this.#slot = slot;
    this.#file = file;
    this.#filed = file && digestOf(writeSite(site)) === file.digest ? site : null;
    this.#unfiledSince = unfiledSince;
    this.#isReminded = isReminded;
    this.#look();
  }

  /** A change of the site, or a new one that is in no file. */
  follow(site: Site): void {
    if (this.#unfiledSince === null && site !== this.#filed) {
      const since = Date.now();
      this.#unfiledSince = since;
      this.#record((record) => ({ ...record, unfiledSince: since }));
    }
    this.#look();
  }

  saved({ name, handle }: { readonly name: string; readonly handle: FileHandle | null }, site: Site): void {
    const file = { name, handle, digest: digestOf(writeSite(site)) };
    this.#file = file;
    this.#filed = site;
    this.#unfiledSince = null;
    this.#isReminded = false;
    this.#isDue = false;
    const change = (kept: KeptFile) => (record: SiteRecord) => ({
      ...record,
      file: kept,
      unfiledSince: null,
      isReminded: false
    });
    // A handle that cannot be kept is no reason to forget that the file is there.
    this.#record(change(file), () => {
      if (handle) this.#record(change({ ...file, handle: null }));
    });
  }

  dismissReminder(): void {
    this.#isDue = false;
    this.#isReminded = true;
    this.#record((record) => ({ ...record, isReminded: true }));
  }

  #look(): void {
    const since = this.#unfiledSince;
    this.#isDue = since !== null && !this.#isReminded && Date.now() - since > REMINDER_AGE;
  }

  #record(change: (record: SiteRecord) => SiteRecord, onFailure = () => {}): void {
    this.#store.change(this.#slot, this.#writer, change).catch(onFailure);
  }
}
