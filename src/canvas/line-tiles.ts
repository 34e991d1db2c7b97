/**
 * Tiles of lines that are too many for a frame: the whole drawing once, coarsely, and what is looked at as fine as the
 * screen, drawn whenever the view has come to rest. Everything in slices: the page goes on meanwhile.
 */
import type { Lines, Underlay } from '#plan/schema';
import type { Frame } from '#scenes/frame';
import {
  partInSight,
  pathsIn,
  thinned,
  tileFor,
  wantsTiles,
  type LineTile,
  type LineTiles,
  type Part
} from '#scenes/underlay-lines';
import { visibleUnderlays } from '#scenes/underlays';

/** Milliseconds without a change of the view. */
const REST = 90;
/** Milliseconds of drawing in one go. */
const SLICE = 7;
/** Longer side of the coarse tile, and of a fine one, pixels. */
const COARSE = 2_048;
const MOST_PIXELS = 4_096;
/** What a fine tile shows beyond what is in sight, as a share of it, on each side. */
const BEYOND = 0.5;
/** Paths that are stroked at once. */
const BUNCH = 24;

interface Wanted {
  readonly lines: Lines;
  readonly part: Part;
  readonly fineness: number;
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Null when it was told to stop. */
async function drawTile(
  wanted: Wanted,
  width: number,
  colour: string,
  signal: AbortSignal
): Promise<LineTile | null> {
  const { lines, part, fineness } = wanted;
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.ceil(part.width * fineness)),
    Math.max(1, Math.ceil(part.height * fineness))
  );
  const context = canvas.getContext('2d');
  if (!context) return null;
  context.strokeStyle = colour;
  context.lineWidth = width;
  const paths = pathsIn(lines, part);
  let begun = performance.now();
  for (let from = 0; from < paths.length; from += BUNCH) {
    context.beginPath();
    for (const path of paths.slice(from, from + BUNCH)) {
      const points = path.map(([x, y]) => [(x - part.left) * fineness, (y - part.top) * fineness] as const);
      thinned(points).forEach(([x, y], index) => {
        if (index === 0) context.moveTo(x, y);
        else context.lineTo(x, y);
      });
    }
    context.stroke();
    if (performance.now() - begun < SLICE) continue;
    await pause();
    if (signal.aborted) return null;
    begun = performance.now();
  }
  const image = canvas.transferToImageBitmap();
  // the canvas has whole pixels
  const exact = { ...part, width: canvas.width / fineness, height: canvas.height / fineness };
  return { image, part: exact, fineness };
}

function coarse(lines: Lines): Wanted {
  const part = { left: 0, top: 0, width: lines.width, height: lines.height };
  return { lines, part, fineness: COARSE / Math.max(lines.width, lines.height) };
}

/** What is in sight and half as much on each side, as far as the drawing goes. */
function fine(lines: Lines, sight: Part, perUnit: number): Wanted {
  const room = (from: number, size: number, whole: number): readonly [number, number] => {
    const most = Math.max(size, Math.min(size * (1 + 2 * BEYOND), MOST_PIXELS / perUnit));
    const more = (most - size) / 2;
    const start = Math.max(0, from - more);
    return [start, Math.min(whole, from + size + more) - start];
  };
  const [left, width] = room(sight.left, sight.width, lines.width);
  const [top, height] = room(sight.top, sight.height, lines.height);
  const fineness = Math.min(perUnit, MOST_PIXELS / Math.max(width, height));
  return { lines, part: { left, top, width, height }, fineness };
}

export interface TileKeeper {
  /** Begins to draw what this frame wants and has not; `pixelRatio`: pixels of the screen for one of the page. */
  show(frame: Frame, pixelRatio: number): void;
  destroy(): void;
}

/** `onChange` is told whenever a tile is there or gone. */
export function createTileKeeper(onChange: (tiles: LineTiles) => void): TileKeeper {
  let tiles = new Map<Lines, readonly LineTile[]>();
  let colour = '';
  let resting: ReturnType<typeof setTimeout> | undefined;
  let work = new AbortController();
  let looked: readonly unknown[] = [];

  function drop(lines: Lines): void {
    for (const { image } of tiles.get(lines) ?? []) image.close();
    tiles.delete(lines);
  }

  function forget(kept: ReadonlySet<Lines>): void {
    const gone = [...tiles.keys()].filter((lines) => !kept.has(lines));
    if (gone.length === 0) return;
    tiles = new Map(tiles);
    gone.forEach(drop);
    onChange(tiles);
  }

  function put(lines: Lines, tile: LineTile, place: 0 | 1): void {
    const before = tiles.get(lines) ?? [];
    before[place]?.image.close();
    tiles = new Map(tiles).set(lines, place === 0 ? [tile, ...before.slice(1)] : [before[0]!, tile]);
    onChange(tiles);
  }

  async function draw(underlays: readonly Underlay[], frame: Frame, ratio: number, signal: AbortSignal) {
    for (const underlay of underlays) {
      const { lines, metresPerPixel } = underlay;
      const sight = partInSight(underlay, frame.state.viewport);
      if (!lines || !sight) continue;
      const perUnit = metresPerPixel * frame.state.viewport.scale * ratio;
      const wishes = [
        ...(tiles.has(lines) ? [] : ([[coarse(lines), 0]] as const)),
        [fine(lines, sight, perUnit), 1] as const
      ];
      for (const [wish, place] of wishes) {
        const known = tileFor(tiles.get(lines) ?? [], sight, perUnit);
        if (
          place === 1 &&
          known &&
          known.fineness >= Math.min(perUnit * 0.95, wish.fineness * 0.95) &&
          known.fineness <= perUnit * 2.5
        )
          // prettier-ignore
          continue;
        const tile = await drawTile(wish, ratio, colour, signal);
        if (!tile) return;
        if (signal.aborted) tile.image.close();
        else put(lines, tile, place);
      }
    }
  }

  return {
    show(frame, ratio) {
      const { site, state, theme } = frame;
      const now = [site.underlays, site.layers?.underlay, state.viewport, theme, ratio];
      if (now.every((each, index) => each === looked[index])) return;
      looked = now;
      const heavy = visibleUnderlays(site).filter(({ lines }) => lines !== undefined);
      if (heavy.length === 0 && tiles.size === 0) return;
      if (theme.inkSoft !== colour) forget(new Set());
      colour = theme.inkSoft;
      forget(new Set(heavy.map(({ lines }) => lines!)));
      clearTimeout(resting);
      work.abort();
      const wanting = heavy.filter((underlay) => wantsTiles(underlay, state.viewport));
      if (wanting.length === 0) return;
      const { signal } = (work = new AbortController());
      // the first tile at once: until then there is nothing to be seen
      const isBare = wanting.some(({ lines }) => !tiles.has(lines!));
      resting = setTimeout(() => void draw(wanting, frame, ratio, signal), isBare ? 0 : REST);
    },
    destroy() {
      clearTimeout(resting);
      work.abort();
      [...tiles.keys()].forEach(drop);
    }
  };
}
