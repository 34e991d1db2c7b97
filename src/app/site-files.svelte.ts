/** The open site and people's files: opening one, saving to one, and what was refused and why. */
import type { Editor } from '#editor/types';
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { readNewer } from '#plan/newer';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import {
  fileNameFor,
  openFile,
  readContent,
  saveFile,
  type FileContent,
  type FileHandle,
  type FileHost,
  type Opened
} from '#storage/files';
import type { RefusedFile } from '#ui/bench';
import type { Tenure } from '#ui/keeping';
import { withPicturesOfFile } from './file-pictures';
import type { FileRecord } from './file-record.svelte';
import { tooLarge, unreadable } from './refused';

export interface NamedFile {
  readonly name: string;
  readonly handle: FileHandle | null;
}

/** The site that is open, as far as files have to do with it. */
export interface OpenSite {
  readonly site: Site;
  readonly slot: string;
  readonly tenure: Tenure;
  openNew(site: Site, file: NamedFile): void;
  /** Of a newer version: to be looked at only. */
  openToRead(site: Site): void;
}

export class SiteFiles {
  #refused = $state.raw<RefusedFile | null>(null);
  /** By its handle, which tells of which site's file it was said. */
  #changed = $state.raw<FileHandle | null>(null);
  #newerText: string | null = null;
  /** Somebody is being asked for a file to write to. */
  #isAsking = false;
  /** The last save to the file that is open. */
  #last = Promise.resolve();

  readonly #host: () => FileHost;
  readonly #editor: Editor;
  readonly #record: FileRecord;
  readonly #open: OpenSite;

  constructor(host: () => FileHost, editor: Editor, record: FileRecord, open: OpenSite) {
    this.#host = host;
    this.#editor = editor;
    this.#record = record;
    this.#open = open;
  }

  get refused(): RefusedFile | null {
    return this.#refused;
  }

  /** Name of the open site's file that was not written to because somebody else has written to it. */
  get changedFile(): string | null {
    return this.#changed && this.#changed === this.#record.handle ? this.#changed.name : null;
  }

  dismissChanged(): void {
    this.#changed = null;
  }

  refuse(file: RefusedFile): void {
    this.#refused = file;
  }

  dismissRefused(): void {
    this.#refused = null;
    this.#newerText = null;
  }

  async openChosen(): Promise<void> {
    try {
      this.#take(await openFile(this.#host()));
    } catch (problem) {
      this.refuse(unreadable(t('file.chosen'), problem));
    }
  }

  async openDropped(file: FileContent): Promise<void> {
    try {
      this.#take(await readContent(file));
    } catch (problem) {
      this.refuse(unreadable(file.name, problem));
    }
  }

  /** The refused file of a newer version, as far as it is understood. */
  openNewer(): void {
    const site = this.#newerText === null ? null : readNewer(this.#newerText);
    this.dismissRefused();
    if (site) this.#open.openToRead(site);
  }

  /**
   * To the file that is open, or to a new one if there is none or a copy is wanted. What somebody else wrote there is
   * asked about first; `isReplacing` is the answer. Whoever presses the keys twice is asked once; of two that write, the
   * second one waits for the first, or it would find a file that it does not know yet.
   */
  async save(asCopy: boolean, isReplacing = false): Promise<void> {
    if (!asCopy && this.#record.handle) {
      const { slot } = this.#open;
      const save = async () => {
        if (slot === this.#open.slot) await this.#save(false, isReplacing);
      };
      return (this.#last = this.#last.then(save, save));
    }
    if (this.#isAsking) return;
    this.#isAsking = true;
    try {
      await this.#save(asCopy, isReplacing);
    } finally {
      this.#isAsking = false;
    }
  }

  async #save(asCopy: boolean, isReplacing: boolean): Promise<void> {
    // Written by this release it would lose what only the newer one knows.
    if (this.#open.tenure === 'newer') return;
    const { slot, site: shown } = this.#open;
    const handle = asCopy ? null : this.#record.handle;
    const site = await withPicturesOfFile(shown, handle);
    if (site !== shown && this.#open.site === shown)
      this.#editor.commit({ label: saying('underlay.step.recovered'), site });
    const text = writeSite(site);
    const isOurs = (there: string) => isReplacing || this.#record.knows(there, shown);
    const saved = await saveFile(this.#host(), text, fileNameFor(site.name), handle, isOurs);
    if (saved.kind === 'cancelled' || slot !== this.#open.slot) return;
    this.#changed = saved.kind === 'changed elsewhere' ? handle : null;
    if (saved.kind === 'changed elsewhere') return;
    // A copy is a copy: Save goes on writing to the file that there was.
    if (asCopy && this.#record.handle) return;
    this.#record.saved({ name: saved.name, handle: saved.kind === 'saved' ? saved.handle : null }, site);
  }

  #take(opened: Opened): void {
    if (opened.kind === 'cancelled') return;
    if (opened.kind === 'too large') {
      this.refuse(tooLarge(opened));
      return;
    }
    const { name, text, handle } = opened;
    const reading = readSite(text);
    if (reading.ok) {
      this.#open.openNew(reading.site, { name, handle });
      return;
    }
    const isNewer = readNewer(text) !== null;
    this.#newerText = isNewer ? text : null;
    this.refuse({ name, problems: reading.problems, isNewer });
  }
}
