/**
 * Where in the space of a cause's unknowns the readings can come from: boxes that are halved where it matters.
 *
 * A box is known by what its middle predicts. How far its figures move across it, in standard deviations, bounds how much
 * better than its middle any of it can fit, by the triangle inequality; boxes whose best case still counts are halved along
 * the unknown that moves most, until nothing moves by more than a deviation. So a sharp optimum is found from a coarse grid
 * without any of it being scanned.
 */

export interface Axis {
  readonly scale: 'log' | 'linear' | 'whole';
  /** Ascending. */
  readonly values: readonly number[];
  /** Prior at each value; between two of them it changes evenly. */
  readonly weights: readonly number[];
}

/** What a place in that space says of the readings. */
export interface Look {
  /** With slips; what counts. */
  readonly logLikelihood: number;
  /** Without slips; what leads. */
  readonly logNormal: number;
  /** Squared misfit in standard deviations, the part of `logNormal` that a better place can take away. */
  readonly misfit: number;
}

export interface Landscape<L extends Look> {
  readonly axes: readonly Axis[];
  readonly look: (values: readonly number[]) => L;
  /** How far apart what two places predict is, in standard deviations. */
  readonly apart: (a: L, b: L) => number;
}

export interface Particle<L extends Look> {
  readonly values: readonly number[];
  /** Of each unknown, from where to where it stands for. */
  readonly spans: readonly (readonly [number, number])[];
  /** ln (prior × likelihood). */
  readonly logMass: number;
  readonly look: L;
}

/**
 * How far figures move from the middle to either end of one axis. The two halves are kept apart: across decades of a resistance
 * nearly all of the way lies in the upper one. `ends`: what was seen there; null once another axis was cut, which moved them.
 */
interface Along<L extends Look> {
  readonly below: number;
  readonly above: number;
  readonly ends: readonly [L, L] | null;
}

interface Box<L extends Look> {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly logPrior: number;
  readonly look: L;
  readonly along: readonly Along<L>[];
  /** Of ln mass. */
  readonly best: number;
}

/** A box is small enough when its figures move by no more than this many deviations. */
const SMALL = 1;
/** Boxes that cannot hold more than this share of all do not matter. */
const FORGETTABLE = Math.log(1e-3);
/** Into how many pieces each unknown is cut at first: by how many unknowns there are. */
const FIRST_PIECES = [1, 4, 3, 2, 1];

const between = (axis: Axis, place: number): number => {
  const last = axis.values.length - 1;
  const below = Math.min(Math.max(0, Math.floor(place)), Math.max(0, last - 1));
  const [a, b] = [axis.values[below]!, axis.values[Math.min(last, below + 1)]!];
  const part = place - below;
  return axis.scale === 'log' ? a * (b / a) ** part : a + (b - a) * part;
};

/** ∫ of the prior from the first value to a place. */
const priorUpTo = ({ weights }: Axis, place: number): number => {
  let sum = 0;
  for (let k = 0; k + 1 < weights.length && k < place; k++) {
    const part = Math.min(1, place - k);
    const [a, b] = [weights[k]!, weights[k + 1]!];
    sum += part * (a + 0.5 * part * (b - a));
  }
  return sum;
};

const isFixed = ({ scale, values }: Axis): boolean => scale === 'whole' || values.length === 1;

const shareOf = (axis: Axis, low: number, high: number): number => {
  if (isFixed(axis)) return axis.weights[low]! / axis.weights.reduce((sum, each) => sum + each, 0);
  return (priorUpTo(axis, high) - priorUpTo(axis, low)) / priorUpTo(axis, axis.values.length - 1);
};

/** Of one axis, from where to where the first boxes reach. */
const firstPieces = (axis: Axis, unknowns: number): readonly (readonly [number, number])[] => {
  const last = axis.values.length - 1;
  if (isFixed(axis)) return axis.values.map((_, place) => [place, place] as const);
  const count = Math.min(FIRST_PIECES[unknowns] ?? 1, last);
  return Array.from({ length: count }, (_, k) => [(k * last) / count, ((k + 1) * last) / count] as const);
};

const products = <T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] =>
  lists.reduce<readonly (readonly T[])[]>(
    (rows, list) => rows.flatMap((row) => list.map((each) => [...row, each])),
    [[]]
  );

const replaced = (values: readonly number[], place: number, by: number): readonly number[] =>
  values.map((value, k) => (k === place ? by : value));

/** All of it, in at most about `budget` looks. */
export const refine = <L extends Look>(
  { axes, look, apart }: Landscape<L>,
  budget: number
): readonly Particle<L>[] => {
  let looks = 0;
  const lookAt = (places: readonly number[]): L => {
    looks++;
    return look(places.map((place, k) => between(axes[k]!, place)));
  };
  const middleOf = (low: readonly number[], high: readonly number[]): readonly number[] =>
    low.map((from, k) => (from + high[k]!) / 2);
  const boxOf = (
    low: readonly number[],
    high: readonly number[],
    along: readonly Along<L>[],
    at: L
  ): Box<L> => {
    const logPrior = axes.reduce((sum, axis, k) => sum + Math.log(shareOf(axis, low[k]!, high[k]!)), 0);
    const reach = along.reduce((sum, { below, above }) => sum + Math.max(below, above), 0);
    const nearest = Math.max(0, Math.sqrt(at.misfit) - reach);
    const normal = at.logNormal + (at.misfit - nearest * nearest) / 2;
    return { low, high, logPrior, look: at, along, best: logPrior + Math.max(normal, at.logLikelihood) };
  };
  const moveOf = ({ below, above }: Along<L>): number => below + above;
  const isWide = ({ along }: Box<L>): boolean => along.some((each) => moveOf(each) > SMALL);
  const endAt = (middle: readonly number[], axis: number, end: readonly number[]): L =>
    lookAt(replaced(middle, axis, end[axis]!));
  const alongBetween = (from: L, at: L, to: L): Along<L> => ({
    below: apart(from, at),
    above: apart(at, to),
    ends: [from, to]
  });

  const unknowns = axes.filter((axis) => !isFixed(axis)).length;
  const boxes: Box<L>[] = products(axes.map((axis) => firstPieces(axis, unknowns))).map((pieces) => {
    const [low, high] = [pieces.map(([from]) => from), pieces.map(([, to]) => to)];
    const middle = middleOf(low, high);
    const at = lookAt(middle);
    const along = axes.map((axis, k) =>
      isFixed(axis)
        ? { below: 0, above: 0, ends: null }
        : alongBetween(endAt(middle, k, low), at, endAt(middle, k, high))
    );
    return boxOf(low, high, along, at);
  });

  const halves = (box: Box<L>): readonly Box<L>[] => {
    const moves = box.along.map(moveOf);
    const axis = moves.indexOf(Math.max(...moves));
    const cut = (box.low[axis]! + box.high[axis]!) / 2;
    const middle = middleOf(box.low, box.high);
    const [from, to] = box.along[axis]!.ends ?? [endAt(middle, axis, box.low), endAt(middle, axis, box.high)];
    const halved = [
      { low: box.low, high: replaced(box.high, axis, cut), from, to: box.look },
      { low: replaced(box.low, axis, cut), high: box.high, from: box.look, to }
    ];
    return halved.map(({ low, high, from: near, to: far }) => {
      const at = lookAt(middleOf(low, high));
      const along = box.along.map((each, k) =>
        k === axis ? alongBetween(near, at, far) : { ...each, ends: null }
      );
      return boxOf(low, high, along, at);
    });
  };

  while (looks < budget) {
    const total = boxes.reduce(
      (most, { logPrior, look: at }) => Math.max(most, logPrior + at.logLikelihood),
      -Infinity
    );
    let next = -1;
    boxes.forEach((box, k) => {
      if (isWide(box) && (next < 0 || box.best > boxes[next]!.best)) next = k;
    });
    if (next < 0 || boxes[next]!.best < total + FORGETTABLE) break;
    boxes.splice(next, 1, ...halves(boxes[next]!));
  }
  return boxes.map(({ low, high, logPrior, look: at }) => ({
    values: middleOf(low, high).map((place, k) => between(axes[k]!, place)),
    spans: low.map((from, k) => [between(axes[k]!, from), between(axes[k]!, high[k]!)] as const),
    logMass: logPrior + at.logLikelihood,
    look: at
  }));
};
