/** Blocks as the lines that they stand for, as often as they are set, within bounds. */
import type { Point } from '#plan/schema';
import { breathe, type Job } from '../../job';
import { MOST, Unreadable, type DrawnLayer, type DrawnPath } from './drawing';
import { counted, type Block, type Content } from './sections';
import type { BlockThing, PathThing, Thing } from './things';

/** [a, b, c, d, e, f]: x′ = a·x + c·y + e, y′ = b·x + d·y + f. */
type Frame = readonly [number, number, number, number, number, number];

const SAME: Frame = [1, 0, 0, 1, 0, 0];
/** Things of a block lie on the layer of its place if they lie on this one. */
const NEUTRAL = '0';
const BREATH = 20_000;

const onFrame = ([a, b, c, d, e, f]: Frame, [x, y]: Point): Point => [a * x + c * y + e, b * x + d * y + f];

const within = (outer: Frame, inner: Frame): Frame => {
  const [a, b, c, d, e, f] = inner;
  const [A, B, C, D] = outer;
  const [x, y] = onFrame(outer, [e, f]);
  return [A * a + C * b, B * a + D * b, A * c + C * d, B * c + D * d, x, y];
};

/** Where a block's own frame lies, once for each of its rows and columns. */
function frameOf(set: BlockThing, { base }: Block, row: number, column: number): Frame {
  const angle = (set.rotation * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turned: Frame = [cos, sin, -sin, cos, set.at[0], set.at[1]];
  const placed = within(turned, [1, 0, 0, 1, column * set.spacing[0], row * set.spacing[1]]);
  const scaled = within(placed, [set.scale[0], 0, 0, set.scale[1], 0, 0]);
  const based = within(scaled, [1, 0, 0, 1, -base[0], -base[1]]);
  return set.isMirrored ? within([-1, 0, 0, 1, 0, 0], based) : based;
}

interface Layers {
  readonly names: string[];
  readonly places: Map<string, number>;
  readonly paths: number[];
  readonly points: number[];
}

function placeOf(layers: Layers, name: string): number {
  const known = layers.places.get(name);
  if (known !== undefined) return known;
  layers.places.set(name, layers.names.length);
  layers.paths.push(0);
  layers.points.push(0);
  return layers.names.push(name) - 1;
}

export interface Expanded {
  readonly layers: readonly DrawnLayer[];
  readonly paths: readonly DrawnPath[];
}

class Expansion {
  readonly #content: Content;
  readonly #job: Job;
  readonly #layers: Layers = { names: [], places: new Map(), paths: [], points: [] };
  readonly #paths: { layer: number; points: Point[] }[] = [];
  /** The last line, as long as the next one may go on where it ends. */
  #open = false;
  #visits = 0;
  #points = 0;

  constructor(content: Content, job: Job) {
    this.#content = content;
    this.#job = job;
  }

  async all(): Promise<Expanded> {
    await this.#walk(this.#content.things, SAME, NEUTRAL, []);
    const { names, paths, points } = this.#layers;
    return {
      paths: this.#paths,
      layers: names.map((name, index) => ({
        name,
        isHidden: this.#content.hiddenLayers.has(name),
        paths: paths[index]!,
        points: points[index]!
      }))
    };
  }

  async #visited(): Promise<void> {
    if (++this.#visits > MOST.visits) throw new Unreadable('tooMuch');
    if (this.#visits % BREATH === 0) await breathe(this.#job, 1);
  }

  async #walk(
    things: readonly Thing[],
    frame: Frame,
    layer: string,
    inside: readonly string[]
  ): Promise<void> {
    for (const thing of things) {
      await this.#visited();
      const on = thing.layer === NEUTRAL ? layer : thing.layer;
      if (thing.kind === 'path') this.#put(thing, frame, on);
      else await this.#set(thing, frame, on, inside);
    }
  }

  async #set(set: BlockThing, frame: Frame, layer: string, inside: readonly string[]): Promise<void> {
    const block = this.#content.blocks.get(set.name);
    if (!block || inside.includes(set.name) || inside.length >= MOST.depth) {
      counted(this.#content.leftOut, 'damaged');
      return;
    }
    this.#open = false;
    for (let row = 0; row < set.rows; row++)
      for (let column = 0; column < set.columns; column++) {
        await this.#visited();
        const own = within(frame, frameOf(set, block, row, column));
        await this.#walk(block.things, own, layer, [...inside, set.name]);
      }
    this.#open = false;
  }

  #put({ points, isLine }: PathThing, frame: Frame, name: string): void {
    const layer = placeOf(this.#layers, name);
    const placed = points.map((point) => onFrame(frame, point));
    if (!placed.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))) {
      counted(this.#content.leftOut, 'damaged');
      return;
    }
    const last = this.#paths.at(-1);
    const end = last?.points.at(-1);
    const goesOn =
      this.#open && isLine && last?.layer === layer && end?.[0] === placed[0]![0] && end[1] === placed[0]![1];
    if (goesOn && last) last.points.push(placed[1]!);
    else {
      this.#paths.push({ layer, points: placed });
      this.#layers.paths[layer]!++;
    }
    this.#open = isLine;
    const more = goesOn ? 1 : placed.length;
    this.#layers.points[layer]! += more;
    this.#points += more;
    if (this.#points > MOST.points || this.#paths.length > MOST.paths) throw new Unreadable('tooMuch');
  }
}

/** Rejects with `Unreadable` when there is more than is looked at, and with the signal's reason. */
export const expanded = (content: Content, job: Job): Promise<Expanded> => new Expansion(content, job).all();
