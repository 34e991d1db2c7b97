/**
 * What the steel of a drawing does to its loops. Each mat and plate answers each loop near it by itself; that two pieces
 * of steel also see one another is left out. Results are kept by the loop's geometry and the steel's fields.
 */
import type { Dipoles } from '#physics/field/dipoles';
import { STRIDE } from '#physics/field/filaments';
import { mutualInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { add, complex, type Complex } from '#physics/numeric/complex';
import { matrixOf } from '#physics/numeric/complex-matrix';
import type { CholeskyFactor } from '#physics/numeric/cholesky';
import { latticeFactor, matScreen, sinkOf, widened, type Bars } from '#physics/steel/mat';
import {
  inducedDipoles,
  mutualReflection,
  overlapOf,
  ownReflection,
  reflectionOf,
  type Reflection
} from '#physics/steel/reflection';
import { meshSheet, sheetScreen, type SheetMesh } from '#physics/steel/sheet';
import { metalOf } from '#plan/catalogue/metals';
import { contains } from '#plan/geometry/polygons';
import type { Point, Site, Steel } from '#plan/schema';
import { RecentCache } from '../recent-cache';
import type { SteelMatrix } from './circuit-model';
import type { LoopModel } from './loop-model';
import { fitsLattice, isNear, latticeUnder, sheetUnder } from './steel-place';

export interface SteelStore {
  /** The pieces near one loop, as a text to keep results by. */
  near(model: LoopModel, site: Pick<Site, 'steel'>): string;
  /** Null where no steel is near any of the loops. */
  matrixFor(loops: readonly LoopModel[], site: Pick<Site, 'steel'>): SteelMatrix | null;
  /** What steel under both adds to the mutual inductance of loops of two circuits, H. */
  between(a: LoopModel, b: LoopModel, site: Pick<Site, 'steel'>, frequency: number): number;
}

/** What one piece of steel does to one loop. */
interface Answer {
  readonly reflection: Reflection;
  /** H to add to the reflection's real part; see `nearPlane`. */
  readonly correction: number;
}

/** Loops of one circuit share a lattice of at most so many meshes: more do not answer within a gesture. */
const MOST_SHARED_CELLS = 800;

const keyOf = (group: readonly LoopModel[]): string => group.map(({ key }) => key).join('+');

/** A plate nearer to the wires than this is too near for its mesh, metres. */
const NEAR_PLATE = 0.3;

const barsOf = (mat: Extract<Steel, { kind: 'mat' }>): Bars => ({
  pitch: mat.pitch,
  radius: Math.min(mat.barRadius, mat.pitch / 7),
  ...metalOf(mat)
});

const cornersOf = ({ winding }: LoopModel): Point[] =>
  winding.runs.flatMap(
    (run): Point[] =>
    run.kind === 'straight'
      ? [[run.x, run.y], [run.x + run.ux * run.length, run.y + run.uy * run.length]] // prettier-ignore
      : [[run.x - run.radius, run.y - run.radius], [run.x + run.radius, run.y + run.radius]] // prettier-ignore
  );

/** The share of a loop's wire that runs over an outline, by samples. */
const coverOf = ({ filaments }: LoopModel, outline: readonly Point[]): number => {
  let over = 0;
  let all = 0;
  for (let at = 0; at < filaments.length; at += STRIDE) {
    const [x, y, ux, uy, length] = filaments.subarray(at, at + 5) as unknown as [
      number,
      number,
      number,
      number,
      number
    ];
    for (let k = 0; k < WIRE_SAMPLES; k++) {
      const along = (length * (k + 0.5)) / WIRE_SAMPLES;
      all += length;
      if (contains(outline, [x + ux * along, y + uy * along])) over += length;
    }
  }
  return over / all;
};
const WIRE_SAMPLES = 6;

const lowestWire = ({ winding }: LoopModel): number =>
  Math.min(...winding.runs.flatMap(({ heights }) => heights));

const moved = (winding: Winding, height: (z: number) => number): Winding => ({
  ...winding,
  runs: winding.runs.map((run) => ({ ...run, heights: run.heights.map(height) }))
});

/** ΔM, H, of two loops over a conducting plane at `z`: the image of the one, reversed. */
export const throughImage = (a: Winding, b: Winding, z: number): number =>
  -mutualInductance(
    a,
    moved(b, (height) => 2 * z - height)
  );

const imageOf = (winding: Winding, z: number): number => throughImage(winding, winding, z);

/** Steel that a vehicle stands over, as a conducting plane: metres below the road. */
export const planeUnder = (steel: Steel, frequency: number): number =>
  steel.kind === 'mat' ? steel.depth + sinkOf(barsOf(steel), frequency) : Math.max(0, steel.depth);

export const createSteelStore = (): SteelStore => {
  const factors = new RecentCache<string, CholeskyFactor>(40);
  const sheets = new RecentCache<string, SheetMesh>(40);
  const answers = new RecentCache<string, Answer | null>(2_000);
  const overlaps = new RecentCache<string, readonly number[]>(5_000);

  /** `group`: the loops that share one lattice, the model among them. */
  const overMat = (
    model: LoopModel,
    mat: Extract<Steel, { kind: 'mat' }>,
    group: readonly LoopModel[]
  ): Answer | null => {
    const place = latticeUnder(mat, group.flatMap(cornersOf));
    if (!place) return null;
    const bars = place.pitch === mat.pitch ? barsOf(mat) : widened(barsOf(mat), place.pitch);
    const { across, along, index } = place.cells;
    const holes = index.some((cell) => cell < 0) ? index.join() : '';
    const key = `${across} ${along} ${bars.pitch} ${bars.radius} ${holes}`;
    const factor = factors.get(key, () => latticeFactor(place.cells, bars));
    const screen = matScreen(bars, place.cells, factor, place.placement, -mat.depth);
    return { reflection: reflectionOf(screen, model.filaments), correction: 0 };
  };

  /**
   * Close under the wires a plate's mesh is too coarse for the narrow currents below each wire. There the plate is as good
   * as infinite, and what the nearness adds is taken from images: of the loop where it is, less of the loop raised to
   * where the mesh is fine enough.
   */
  const overPlate = (model: LoopModel, plate: Extract<Steel, { kind: 'plate' }>): Answer => {
    const corners = cornersOf(model);
    const { width, length, placement } = sheetUnder(plate, corners);
    const clearance = Math.abs(lowestWire(model) + plate.depth);
    const fine = Math.max(clearance, NEAR_PLATE / 2);
    const key = [width, length, fine].map((value) => value.toFixed(3)).join(' ');
    const sheet = sheets.get(key, () => meshSheet(width, length, fine));
    const screen = sheetScreen(sheet, metalOf(plate), placement, -plate.depth);
    const reflection = reflectionOf(screen, model.filaments);
    const isOver = corners.every((corner) => contains(plate.outline, corner));
    if (clearance >= NEAR_PLATE || !isOver) return { reflection, correction: 0 };
    const above = lowestWire(model) > -plate.depth ? 1 : -1;
    const shift = above * (NEAR_PLATE - clearance);
    const raisedSheet = sheets.get(
      [width, length, NEAR_PLATE].map((value) => value.toFixed(3)).join(' '),
      () => meshSheet(width, length, NEAR_PLATE)
    );
    const lifted = reflectionOf(
      sheetScreen(raisedSheet, metalOf(plate), placement, -plate.depth - shift),
      model.filaments
    );
    const wanted =
      ownReflection(lifted, REFERENCE).re +
      imageOf(model.winding, -plate.depth) -
      imageOf(model.winding, -plate.depth - shift);
    return { reflection, correction: wanted - ownReflection(reflection, REFERENCE).re };
  };

  const texts = new WeakMap<Steel, string>();
  const textOf = (steel: Steel): string => {
    const known = texts.get(steel);
    if (known !== undefined) return known;
    const text = JSON.stringify(steel);
    texts.set(steel, text);
    return text;
  };

  const nearness = new RecentCache<string, boolean>(20_000);
  /** Of one drawing: every pair of circuits asks for the pieces near each of its loops. */
  const found = new WeakMap<readonly Steel[], Map<LoopModel, readonly Steel[]>>();
  const piecesNear = (model: LoopModel, { steel: all }: Pick<Site, 'steel'>): readonly Steel[] => {
    const known = found.get(all) ?? new Map<LoopModel, readonly Steel[]>();
    found.set(all, known);
    const pieces =
      known.get(model) ??
      all.filter((steel) =>
        nearness.get(`${model.key} ${textOf(steel)}`, () => isNear(steel, cornersOf(model)))
      );
    known.set(model, pieces);
    return pieces;
  };

  const answerOf = (model: LoopModel, steel: Steel, group: readonly LoopModel[]): Answer | null =>
    answers.get(`${model.key} ${textOf(steel)} ${keyOf(group)}`, () => {
      if (!isNear(steel, cornersOf(model))) return null;
      return steel.kind === 'mat' ? overMat(model, steel, group) : overPlate(model, steel);
    });

  /**
   * Loops of a circuit that lie over one mat share its lattice, or what the mat does to their coupling would end where the
   * first one's lattice does; too many meshes for that, and each has its own.
   */
  const groupFor = (loops: readonly LoopModel[], steel: Steel): readonly LoopModel[] | null => {
    if (steel.kind === 'plate' || loops.length < 2) return null;
    const near = loops.filter((model) => isNear(steel, cornersOf(model)));
    return near.length > 1 && fitsLattice(steel, near.flatMap(cornersOf), MOST_SHARED_CELLS) ? near : null;
  };

  const matrixFor = (loops: readonly LoopModel[], site: Pick<Site, 'steel'>): SteelMatrix | null => {
    const near = new Set(loops.flatMap((model) => piecesNear(model, site)));
    const pieces = [...near].flatMap((steel) => {
      const shared = groupFor(loops, steel);
      const own = loops.map((model) => answerOf(model, steel, shared?.includes(model) ? shared : [model]));
      const text = `${textOf(steel)} ${keyOf(shared ?? [])}`;
      return own.some((answer) => answer !== null) ? [{ text, own, steel }] : [];
    });
    if (pieces.length === 0) return null;
    const between = (i: number, j: number, frequency: number): Complex =>
      pieces.reduce((sum, { text, own }) => {
        // the drawing alone decides which of the two answers is used
        const [a, b] = loops[i]!.drawn <= loops[j]!.drawn ? [i, j] : [j, i];
        const answer = own[a];
        if (!answer || !own[b]) return sum;
        if (i === j) {
          const { re, im } = ownReflection(answer.reflection, frequency);
          return add(sum, complex(re + answer.correction, im));
        }
        const overlap = overlaps.get(`${loops[a]!.key} ${loops[b]!.key} ${text}`, () =>
          overlapOf(answer.reflection, loops[b]!.filaments)
        );
        return add(sum, mutualReflection(answer.reflection, overlap, frequency));
      }, complex(0));
    return {
      pieces: pieces.map(({ steel }) => ({
        steel,
        covers: loops.map((model) => coverOf(model, steel.outline))
      })),
      at: (frequency) => matrixOf(loops.length, loops.length, (i, j) => between(i, j, frequency)),
      dipolesAt: (frequency) =>
        loops.map((_, i) =>
          joined(pieces.flatMap(({ own }) => (own[i] ? [inducedDipoles(own[i].reflection, frequency)] : [])))
        )
    };
  };

  const covers = new RecentCache<string, number>(20_000);
  const coverBy = (steel: Steel, model: LoopModel): number =>
    covers.get(`${model.key} ${textOf(steel)}`, () => coverOf(model, steel.outline));

  const planes = new RecentCache<string, number>(50_000);
  /**
   * Loops of two circuits over one piece see each other's image in it, a mat as a plane at its apparent depth, in so far
   * as each lies over it. A lattice of both would have to reach from one to the other.
   */
  const between: SteelStore['between'] = (first, second, site, frequency) => {
    const [a, b] = first.drawn <= second.drawn ? [first, second] : [second, first];
    const besides = new Set(piecesNear(b, site));
    let sum = 0;
    for (const steel of piecesNear(a, site)) {
      if (!besides.has(steel)) continue;
      const share = coverBy(steel, a) * coverBy(steel, b);
      if (share === 0) continue;
      const z = steel.kind === 'mat' ? -planeUnder(steel, frequency) : -steel.depth;
      sum += share * planes.get(`${a.key} ${b.key} ${z}`, () => throughImage(a.winding, b.winding, z));
    }
    return sum;
  };

  return { matrixFor, between, near: (model, site) => piecesNear(model, site).map(textOf).join() };
};

/** Where a plate's correction is taken; it hardly depends on frequency. */
const REFERENCE = 50_000;

const joined = (all: readonly Dipoles[]): Dipoles | null => {
  if (all.length <= 1) return all[0] ?? null;
  const result = new Float64Array(all.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const dipoles of all) {
    result.set(dipoles, at);
    at += dipoles.length;
  }
  return result;
};
