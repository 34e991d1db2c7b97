/** The site that is open: whose it is, where it is kept, which file it has, and how another one takes its place. */
import type { Editor } from '#editor/types';
import { t } from '#i18n/message';
import { updateSite } from '#plan/edits/index';
import { joined, writePieces } from '#plan/write';
import type { Site } from '#plan/schema';
import { createAutosave, type Autosave, type SaveState } from '#storage/autosave';
import type { FileHost } from '#storage/files';
import type { KeptState, SetAside } from '#storage/states';
import type { StoredValue } from '#storage/stored-value';
import type { Salvage, Saving } from '#ui/bench';
import type { Keeping, LinkNotice, Tenure } from '#ui/keeping';
import { after } from './after';
import { copyName, enterSlot, freshSlot, type Desk } from './enter-slot';
import { FileRecord } from './file-record.svelte';
import { InstallOffer } from './install.svelte';
import { unreadable } from './refused';
import { SiteFiles, type NamedFile, type OpenSite } from './site-files.svelte';
import { awaitKept, type Start } from './start';

export interface KeptWorkParts extends Desk {
  readonly start: Start;
  readonly files: () => FileHost;
  /** Which slot this tab has, over a reload. */
  readonly tabSlot: StoredValue<string | null>;
  /** Brings into the store what pages that went away have left for it. Never rejects. */
  readonly takeLastWords: () => Promise<void>;
}

const savingOf = (state: SaveState): Saving =>
  state.kind === 'not saved' ? { kind: state.kind, why: state.why.kind, detail: state.why.detail } : state;

export class KeptWork implements Keeping, OpenSite {
  readonly files: SiteFiles;

  #saving = $state.raw<Saving>({ kind: 'saved' });
  #tenure: Tenure;
  #slot: string;
  #salvage: readonly Salvage[];
  #recoveredFrom: number | null;
  #elsewhere: Keeping['elsewhere'];
  #late: Keeping['late'];
  #linkNotice = $state.raw<LinkNotice | null>(null);
  #isOnlyHere = $state.raw(false);

  readonly #parts: KeptWorkParts;
  readonly #editor: Editor;
  /** Opens another site in the place of the open one, with everything else that has to happen then. */
  readonly #replace: (open: () => void) => void;
  readonly #autosave: Autosave<Site>;
  readonly #file: FileRecord;
  readonly #install = new InstallOffer();
  /** As the editor has it. */
  #site: Site;
  /** That was written to, or asked to be. */
  #keptSlot: string | null = null;
  #isOpening = false;
  /** What is to be opened: whoever comes to it after a later wish drops it. */
  #wish: { readonly slot: string } | null = null;
  /** The slot that another tab is being asked for. */
  #takingOver: string | null = null;

  constructor(parts: KeptWorkParts, editor: Editor, replace: (open: () => void) => void) {
    const { start } = parts;
    this.#parts = parts;
    this.#editor = editor;
    this.#replace = replace;
    this.#slot = start.slot;
    this.#site = $state.raw(editor.state.site);
    this.#tenure = $state.raw(start.tenure);
    this.#salvage = $state.raw(start.salvage);
    this.#recoveredFrom = $state.raw(start.recoveredFrom);
    this.#elsewhere = $state.raw(start.elsewhere);
    this.#late = $state.raw(start.unread && { kind: 'awaited' });
    // Until something is done here the tab is still where it was.
    if (!start.unread) parts.tabSlot.set(start.slot);
    editor.setReadOnly(start.tenure !== 'own');
    this.#autosave = createAutosave<Site>({
      store: parts.store,
      writer: parts.writer,
      slot: start.slot,
      newest: start.newest,
      describe: (site) => {
        const pieces = writePieces(site);
        return { name: site.name, text: joined(pieces), pieces };
      },
      now: Date.now,
      after,
      onState: (state) => {
        this.#saving = savingOf(state);
        if (state.kind === 'not saved' && state.why.kind === 'taken') this.lost(this.#slot);
      }
    });
    this.#file = new FileRecord(parts.store, parts.writer);
    this.#file.begin(start.record, this.#site);
    this.files = new SiteFiles(parts.files, editor, this.#file, this);
    this.#install.watch();
    if (start.unread) void this.#await(start.unread.remembered);
  }

  /** The site as it was committed last. */
  follow(site: Site): void {
    if (site === this.#site) return;
    this.#site = site;
    if (this.#isOpening || this.#tenure !== 'own') return;
    this.#recoveredFrom = null;
    this.#linkNotice = null;
    this.#keep();
    this.#file.follow(site);
  }

  /** Also a site in which nothing was changed yet, such as the demo: once a visit. */
  keepSite(): void {
    if (this.#tenure === 'own' && this.#keptSlot !== this.#slot) this.#keep();
  }

  #keep(): void {
    if (this.#keptSlot !== this.#slot) this.#parts.tabSlot.set(this.#slot);
    this.#keptSlot = this.#slot;
    this.#autosave.changed(this.#site);
  }

  get site() {
    return this.#site;
  }
  get slot() {
    return this.#slot;
  }
  get saving() {
    return this.#saving;
  }
  get tenure() {
    return this.#tenure;
  }
  get salvage() {
    return this.#salvage;
  }
  get recoveredFrom() {
    return this.#recoveredFrom;
  }
  get elsewhere() {
    return this.#elsewhere;
  }
  get late() {
    return this.#late;
  }
  get linkNotice() {
    return this.#linkNotice;
  }
  get file() {
    return this.#file.shown(this.#site);
  }
  get isReminderDue() {
    return this.#tenure === 'own' && this.#file.isReminderDue;
  }
  get isOnlyHere() {
    return this.#isOnlyHere;
  }
  get canInstall() {
    return this.#install.isThere;
  }

  dismissReminder() {
    this.#file.dismissReminder();
  }
  dismissElsewhere() {
    this.#elsewhere = null;
  }
  dismissLate() {
    this.#late = null;
  }
  dismissLinkNotice() {
    this.#linkNotice = null;
  }
  dismissSalvage() {
    this.#salvage = [];
  }
  dismissRecovery() {
    this.#recoveredFrom = null;
  }
  install() {
    return this.#install.take();
  }

  /** A site that is nowhere yet: it gets a slot of its own and is kept at once. */
  openNew(site: Site, file: NamedFile | null = null) {
    const slot = freshSlot();
    void this.#parts.tenancy.hold(slot);
    this.#show(site, slot, 'own');
    this.#file.begin({ slot, file: null, unfiledSince: null, isReminded: false }, this.#site);
    if (file) this.#file.saved(file, this.#site);
    else this.#file.follow(this.#site);
    this.#autosave.changed(this.#site);
  }

  async open(slot: string) {
    if (slot === this.#slot && this.#tenure !== 'newer') return;
    const wish = (this.#wish = { slot });
    await this.#autosave.flush();
    await this.#enter(wish);
  }

  /** Once, however often it is asked for meanwhile: a second time it would take the site from itself. */
  async takeOver() {
    const slot = this.#slot;
    if (this.#takingOver === slot) return;
    this.#takingOver = slot;
    const wish = (this.#wish = { slot });
    try {
      await this.#parts.tenancy.takeOver(slot);
      await this.#enter(wish);
    } finally {
      if (this.#takingOver === slot) this.#takingOver = null;
    }
  }

  workOnCopy() {
    this.openNew(updateSite(this.#site, { name: copyName(this.#site.name) }));
  }

  /** Another tab asks for a slot that this one holds. */
  async letGo(slot: string) {
    await this.#autosave.flush();
    this.lost(slot);
    this.#parts.tenancy.release(slot);
  }

  /** Another tab has it now; what has not been written stays on the screen, for a copy. */
  lost(slot: string) {
    if (slot !== this.#slot || this.#tenure !== 'own') return;
    this.#isOnlyHere = this.unsaved().some((state) => state.slot === slot);
    this.#tenure = 'taken';
    this.#editor.setReadOnly(true);
    this.#autosave.drop();
  }

  openToRead(site: Site) {
    const slot = freshSlot();
    this.#show(site, slot, 'newer');
    this.#file.begin({ slot, file: null, unfiledSince: null, isReminded: false }, this.#site);
  }

  openNewer() {
    this.files.openNewer();
  }

  async makeLink() {
    const { makeLink } = await import('./share');
    return makeLink(this.#site);
  }

  /** Of what an address ends in; whatever is wrong with it, what is open stays. */
  async openLink(hash: string) {
    const { readShared } = await import('./share');
    const found = await readShared(hash);
    if (found.kind === 'none') return;
    if (found.kind === 'refused') {
      this.files.refuse({ name: t('keeping.link.name'), problems: found.problems });
      return;
    }
    if (found.kind === 'site') this.openNew(found.site);
    this.#linkNotice = found.kind === 'site' ? found.notice : found.kind;
  }

  async sites() {
    const { createSites } = await import('./sites');
    return createSites({
      ...this.#parts,
      here: () => (this.#tenure === 'newer' ? null : this.#slot),
      site: () => this.#site,
      flush: () => this.flush(),
      openNew: (site) => {
        this.openNew(site);
      },
      open: (slot) => this.open(slot),
      change: (site, label) => {
        this.#autosave.beginState();
        this.#editor.commit({ label, site });
      }
    });
  }

  downloadAside({ key, text }: Pick<SetAside, 'key' | 'text'>) {
    this.#parts.files().download(text, `${key.replace(/[^\w.-]+/g, '-')}.txt`);
  }

  /** Writes what waits; for the moment when the page goes out of sight. */
  flush() {
    return this.#autosave.flush();
  }

  /** For the moment when the page goes away: what a write may not reach any more. */
  unsaved(): readonly KeptState[] {
    return this.#autosave.unsaved();
  }

  /** The site that the page would have begun with comes by itself, unless something has been done here meanwhile. */
  async #await(remembered: string | null) {
    const { store, takeLastWords, start } = this.#parts;
    const found = await awaitKept(store, remembered, start.slot, takeLastWords);
    const isUntouched = () => {
      const { revision, busy } = this.#editor.state;
      return this.#slot === start.slot && this.#keptSlot === null && revision === 0 && !busy;
    };
    if (found && isUntouched()) {
      const recovered = await this.#enter((this.#wish = found), isUntouched);
      if (recovered !== null) this.#recoveredFrom = recovered;
    }
    // Where it is still untouched, what was found cannot be opened, which has been said.
    this.#late = found && found.slot !== this.#slot && !isUntouched() ? { kind: 'there', ...found } : null;
  }

  /** Result: when the site that is shown now was saved, if it was brought back to be worked on. */
  async #enter(wish: { readonly slot: string }, isWanted = () => true): Promise<number | null> {
    const { slot } = wish;
    const isDropped = () => {
      if (this.#wish === wish && isWanted()) return false;
      if (this.#wish === wish) this.#wish = null;
      if (slot !== this.#slot && slot !== this.#wish?.slot) this.#parts.tenancy.release(slot);
      return true;
    };
    if (isDropped()) return null;
    const { tenure, record, recovery } = await enterSlot(this.#parts, slot);
    this.#salvage = [...this.#salvage, ...recovery.aside];
    if (isDropped()) return null;
    const { found, refusal } = recovery;
    if (!found || tenure === 'newer release') {
      this.#parts.tenancy.release(slot);
      const reason = refusal?.detail ?? t('keeping.nothingReadable');
      this.files.refuse(unreadable(t('keeping.site'), new Error(reason)));
      return null;
    }
    const { savedAt } = found.state;
    this.#show(found.document, slot, tenure, savedAt);
    this.#file.begin(record, this.#site);
    return tenure === 'own' ? savedAt : null;
  }

  #show(site: Site, slot: string, tenure: Tenure, newest: number | null = null) {
    const before = this.#slot;
    this.#wish = null;
    if (before !== slot)
      void this.#autosave.flush().then(() => {
        if (this.#slot !== before) this.#parts.tenancy.release(before);
      });
    this.#slot = slot;
    if (tenure !== 'newer') this.#parts.tabSlot.set(slot);
    this.#autosave.beginSite(slot, newest);
    this.#tenure = tenure;
    this.#recoveredFrom = null;
    this.#elsewhere = null;
    this.#linkNotice = null;
    this.#isOpening = true;
    this.#replace(() => {
      this.#editor.setReadOnly(tenure !== 'own');
      this.#editor.open(site);
    });
    this.#site = this.#editor.state.site;
    this.#isOpening = false;
  }
}
