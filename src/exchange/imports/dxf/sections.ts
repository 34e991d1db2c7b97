/**
 * A drawing's text in the order in which it stands: units, layers, and things, each of them for the block that it belongs
 * to or for the drawing itself. Things go to the library in portions, so that the page breathes between them.
 */
import { parseString, type RawEntity } from 'dxf';
import { breathe, type Job } from '../../job';
import { MOST, Unreadable, type LeftOut } from './drawing';
import { groupsOf, type Group, type Groups } from './groups';
import { DRAWN, leftOutKind, thingOf, type Thing } from './things';
import { metresOf } from './units';

export interface Block {
  readonly base: readonly [number, number];
  readonly things: Thing[];
}

export interface Content {
  metresPerUnit: number | null;
  readonly hiddenLayers: Set<string>;
  readonly blocks: Map<string, Block>;
  readonly things: Thing[];
  readonly leftOut: Map<LeftOut, number>;
}

/** Characters of things that the library reads in one go: a few milliseconds. */
const PORTION = 100_000;
/** Groups that are looked at between two breaths. */
const BREATH = 30_000;
/** Characters of a list of layers. */
const MOST_LAYERS = 4_000_000;

const FROZEN = 1;

function libraryReads(section: string, content: string): ReturnType<typeof parseString> | null {
  try {
    return parseString(
      `0\nSECTION\n2\n${section}\n${content}${content.endsWith('\n') ? '' : '\n'}0\nENDSEC\n`
    );
  } catch {
    return null;
  }
}

export const counted = (leftOut: Map<LeftOut, number>, what: LeftOut, count = 1): void => {
  leftOut.set(what, (leftOut.get(what) ?? 0) + count);
};

class Reader {
  readonly content: Content = {
    metresPerUnit: null,
    hiddenLayers: new Set(),
    blocks: new Map(),
    things: [],
    leftOut: new Map()
  };
  readonly #text: string;
  readonly #job: Job;
  readonly #groups: Groups;
  #group: Group | null = null;
  #read = 0;
  #isAnything = false;

  constructor(text: string, job: Job) {
    this.#text = text;
    this.#job = job;
    this.#groups = groupsOf(text);
  }

  async #next(): Promise<Group> {
    this.#read++;
    if (this.#read % BREATH === 0) await breathe(this.#job, (this.#group?.to ?? 0) / this.#text.length);
    this.#group = this.#groups.next();
    if (!this.#group) throw new Unreadable('cut');
    return this.#group;
  }

  /** To the next group that begins something. */
  async #toStart(): Promise<Group> {
    let group = await this.#next();
    while (group.code !== 0) group = await this.#next();
    return group;
  }

  async all(): Promise<Content> {
    for (;;) {
      const group = this.#isAnything ? await this.#toStart() : await this.#next();
      if (!this.#isAnything && group.code !== 0 && group.code !== 999) throw new Unreadable('none');
      if (group.code !== 0) continue;
      if (group.value === 'EOF') return this.content;
      if (group.value === 'SECTION') {
        this.#isAnything = true;
        await this.#section((await this.#next()).value);
      } else if (!this.#isAnything) throw new Unreadable('none');
    }
  }

  async #section(name: string): Promise<void> {
    if (name === 'HEADER') await this.#header();
    else if (name === 'TABLES') await this.#tables();
    else if (name === 'BLOCKS') await this.#blocks();
    else if (name === 'ENTITIES') await this.#things(this.content.things, 'ENDSEC');
    else while ((await this.#toStart()).value !== 'ENDSEC');
  }

  async #header(): Promise<void> {
    for (let variable = ''; ;) {
      const { code, value } = await this.#next();
      if (code === 0) return;
      if (code === 9) variable = value;
      else if (variable === '$INSUNITS') this.content.metresPerUnit = metresOf(Number(value));
    }
  }

  async #tables(): Promise<void> {
    const from = this.#group?.to ?? 0;
    let group = await this.#toStart();
    while (group.value !== 'ENDSEC') group = await this.#toStart();
    if (group.from - from > MOST_LAYERS) return;
    const layers = libraryReads('TABLES', this.#text.slice(from, group.from))?.tables.layers ?? {};
    for (const [name, layer] of Object.entries(layers))
      if (((layer?.flags ?? 0) & FROZEN) !== 0 || (layer?.colorNumber ?? 0) < 0)
        this.content.hiddenLayers.add(name);
  }

  async #blocks(): Promise<void> {
    for (let start = await this.#toStart(); start.value !== 'ENDSEC'; start = await this.#toStart()) {
      if (start.value !== 'BLOCK') continue;
      let name = '';
      const base: [number, number] = [0, 0];
      let group = await this.#next();
      for (; group.code !== 0; group = await this.#next()) {
        if (group.code === 2) name = group.value;
        if (group.code === 10 || group.code === 20)
          base[group.code === 10 ? 0 : 1] = Number(group.value) || 0;
      }
      const block: Block = { base, things: [] };
      this.content.blocks.set(name, block);
      await this.#things(block.things, 'ENDBLK', group);
    }
  }

  /** From here, or from the group that began the first, up to the end. */
  async #things(into: Thing[], end: string, begun?: Group): Promise<void> {
    const portion: string[] = [];
    let size = 0;
    const read = () => {
      if (portion.length > 0) this.#take(portion.join(''), into);
      portion.length = 0;
      size = 0;
    };
    let start = begun ?? (await this.#toStart());
    while (start.value !== end) {
      if (start.value === 'ENDSEC' || start.value === 'EOF') throw new Unreadable('damaged');
      const { value: type, from } = start;
      let next = await this.#toStart();
      // corners stand behind their line as things of their own
      if (type === 'POLYLINE') while (next.value === 'VERTEX') next = await this.#toStart();
      const length = next.from - from;
      if (!DRAWN.has(type)) {
        const what = leftOutKind(type);
        if (what) counted(this.content.leftOut, what);
      } else if (length > MOST.thing) counted(this.content.leftOut, 'damaged');
      else {
        portion.push(this.#text.slice(from, next.from));
        size += length;
      }
      if (size >= PORTION) {
        read();
        await breathe(this.#job, next.from / this.#text.length);
      }
      start = next;
    }
    read();
  }

  #take(text: string, into: Thing[]): void {
    const found = libraryReads('ENTITIES', text)?.entities;
    if (!found) throw new Unreadable('damaged');
    for (const entity of found) this.#put(entity, into);
  }

  #put(entity: RawEntity, into: Thing[]): void {
    // switched off one by one: its layer may be on
    if (entity['visible'] === false) return;
    const { metresPerUnit, leftOut } = this.content;
    // a block may be set at any size
    const thing = thingOf(entity, into === this.content.things ? metresPerUnit : null);
    if (typeof thing === 'string') counted(leftOut, thing);
    else into.push(thing);
  }
}

/** Rejects with `Unreadable`, `NoGroups`, or the signal's reason. */
export const contentOf = (text: string, job: Job): Promise<Content> => new Reader(text, job).all();
