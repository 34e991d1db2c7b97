/**
 * A field in goes: coarse at once, the same without the vehicle, then fine. While a hand moves only coarse ones are asked
 * for, one at a time with the newest wish waiting; a fine one is given up as soon as something newer is wanted. What the
 * field is without the vehicle is asked for once as long as only the vehicle moves.
 */
import type { FieldPicture, FieldWish } from '#analysis/field-picture/results';
import type { Outcome } from '../../bench';
import { edgesOf } from './frame';
import { netOf } from './planes';

/** Nodes, and field lines. */
const NODES = { coarse: 1_500, fine: 7_200 } as const;
const LINES = 22;

export type PlaneWish = Omit<FieldWish, 'columns' | 'rows' | 'lines'>;

export interface Asker {
  ask(wish: FieldWish): Promise<Outcome<'draw-field'>>;
  /** Ends the question that is open, as superseded. */
  drop(): void;
}

interface ShownField {
  readonly picture: FieldPicture;
  /** On the same net, with and without the vehicle; null without one. */
  readonly pair: { readonly withVehicle: FieldPicture; readonly bare: FieldPicture } | null;
  readonly isFine: boolean;
}

interface Waiting {
  readonly wish: PlaneWish;
  /** Of what the field depends on beside the wish. */
  readonly drawing: unknown;
}

/** What there is to see. */
export interface Refined {
  /** The newest there is; null before the first, and where there is nothing to show. */
  readonly shown: ShownField | null;
  /** Why there is none, if something went wrong. */
  readonly reason: string | null;
  readonly isBusy: boolean;
}

export class FieldRefiner {
  readonly #asker: Asker;
  readonly #tell: (state: Refined) => void;
  #state: Refined = { shown: null, reason: null, isBusy: false };
  #waiting: Waiting | null = null;
  #bare: { readonly key: string; readonly drawing: unknown; readonly picture: FieldPicture } | null = null;
  #isRunning = false;
  #isRefining = false;

  /** `tell` hears of every change. */
  constructor(asker: Asker, tell: (state: Refined) => void) {
    this.#asker = asker;
    this.#tell = tell;
  }

  want(wish: PlaneWish, drawing: unknown): void {
    this.#waiting = { wish, drawing };
    if (this.#isRefining) this.#asker.drop();
    if (!this.#isRunning) void this.#run();
  }

  /** Nobody looks any more. */
  stop(): void {
    this.#waiting = null;
    this.#change({ shown: null });
    this.#bare = null;
    if (this.#isRunning) this.#asker.drop();
  }

  #change(patch: Partial<Refined>): void {
    this.#state = { ...this.#state, ...patch };
    this.#tell(this.#state);
  }

  async #run(): Promise<void> {
    this.#isRunning = true;
    this.#change({ isBusy: true });
    for (let next = this.#next(); next; next = this.#next()) await this.#answer(next);
    this.#isRunning = false;
    this.#change({ isBusy: false });
  }

  async #answer({ wish, drawing }: Waiting): Promise<void> {
    const coarse = asked(wish, NODES.coarse, LINES);
    const first = this.#heard(await this.#asker.ask(coarse));
    if (!first) return;
    const known = this.#bareOf(coarse, drawing);
    const pairOf = (bare: FieldPicture | null) =>
      bare && wish.vehicle ? { withVehicle: first, bare } : null;
    // while a hand moves the last fine picture gives way, and what was said of the last place with it
    this.#change({ shown: { picture: first, pair: pairOf(known), isFine: false } });
    if (this.#isOutdated()) return;
    let bare = known;
    if (wish.vehicle && !bare) {
      bare = this.#heard(await this.#asker.ask({ ...coarse, vehicle: null, lines: 0 }));
      if (bare) this.#bare = { key: keyOf(coarse), drawing, picture: bare };
      if (this.#isOutdated()) return;
      this.#change({ shown: { picture: first, pair: pairOf(bare), isFine: false } });
    }
    this.#isRefining = true;
    const fine = this.#heard(await this.#asker.ask(asked(wish, NODES.fine, LINES)));
    this.#isRefining = false;
    if (fine && !this.#isOutdated())
      this.#change({ shown: { picture: fine, pair: pairOf(bare), isFine: true } });
  }

  #bareOf(coarse: FieldWish, drawing: unknown): FieldPicture | null {
    const bare = this.#bare;
    return bare && bare.drawing === drawing && bare.key === keyOf(coarse) ? bare.picture : null;
  }

  /** Something newer waits, or nobody looks. */
  #isOutdated(): boolean {
    return this.#waiting !== null || this.#state.shown === null;
  }

  #next(): Waiting | null {
    const next = this.#waiting;
    this.#waiting = null;
    return next;
  }

  #heard(outcome: Outcome<'draw-field'>): FieldPicture | null {
    if (outcome.kind === 'superseded') return null;
    this.#change({ reason: outcome.kind === 'failed' ? outcome.reason : null });
    if (outcome.kind === 'failed') return null;
    if (outcome.answer === null) this.#change({ shown: null });
    return outcome.answer;
  }
}

const keyOf = ({ source, plane, columns, rows }: FieldWish): string =>
  JSON.stringify([source, plane, columns, rows]);

function asked(wish: PlaneWish, nodes: number, lines: number): FieldWish {
  const { left, right, bottom, top } = edgesOf(wish.plane);
  return { ...wish, ...netOf(right - left, top - bottom, nodes), lines };
}
