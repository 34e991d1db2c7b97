/** From a pair's picture to what its table and its curves show. Pure. */
import type { Profile } from '#analysis/passing/results';
import { responseAt } from '#analysis/passing/zones';
import { measureSpeed, spacingFor } from '#analysis/speed-pair/measure';
import type {
  LoopPair,
  PairDirection,
  PairPass,
  PairPicture,
  SpeedMeasurement
} from '#analysis/speed-pair/results';

export interface SpeedRow {
  readonly pass: PairPass;
  /** Null where there is no speed to be had. */
  readonly measurement: SpeedMeasurement | null;
  /** Of the pair, leading edge to leading edge, at which the error falls to the aim, m; null without a measurement. */
  readonly spacing_m: number | null;
}

export const keyOf = ({ first, second }: Pick<LoopPair, 'first' | 'second'>): string =>
  JSON.stringify([first, second]);

export const pairChosen = (pairs: readonly LoopPair[], key: string | null): LoopPair | null =>
  pairs.find((pair) => keyOf(pair) === key) ?? pairs[0] ?? null;

export const isOf = (picture: PairPicture, { first, second }: LoopPair): boolean =>
  picture.forward.sides[0].circuit === first && picture.forward.sides[1].circuit === second;

export const rowsOf = (
  picture: PairPicture,
  direction: PairDirection,
  speed: number,
  aim: number
): readonly SpeedRow[] =>
  direction.passes.map((pass) => {
    const measurement = measureSpeed(direction, picture.spacingTolerance_m, pass, speed);
    return {
      pass,
      measurement,
      spacing_m: measurement && spacingFor(measurement, direction.spacing_m, aim)
    };
  });

/** The largest spacing that any of the vehicles wants; null where one has no speed at all. */
export const widest = (rows: readonly SpeedRow[]): number | null => {
  const wanted = rows.map(({ spacing_m }) => spacing_m);
  return wanted.length === 0 || wanted.includes(null) ? null : Math.max(...wanted.map((each) => each ?? 0));
};

/** Where the curves are worth looking at, metres of the vehicle's middle: from where either answers to where both have ended. */
export const stretchOf = ({ profiles }: PairPass): readonly [number, number] => {
  const [first, second] = profiles;
  const end = ({ from, step, values }: Profile) => from + step * (values.length - 1);
  return [Math.min(first.from, second.from), Math.max(end(first), end(second))];
};

/** Seconds since the first trip, or since the curves begin where there is none. */
export const zeroOf = (pass: PairPass): number => pass.crossings?.[0].trip_m ?? stretchOf(pass)[0];

/** Both responses so many seconds after the zero. */
export const responsesAt = (pass: PairPass, seconds: number, speed: number): readonly [number, number] => {
  const along = zeroOf(pass) + seconds * speed;
  return [responseAt(pass.profiles[0], along), responseAt(pass.profiles[1], along)];
};

/** Tenths of a pixel. */
export const curvePath = (
  { from, step, values }: Profile,
  x: (along: number) => number,
  y: (response: number) => number
): string => {
  let path = '';
  values.forEach((value, k) => {
    path += `${k === 0 ? 'M' : 'L'}${x(from + k * step).toFixed(1)} ${y(value).toFixed(1)}`;
  });
  return path;
};
