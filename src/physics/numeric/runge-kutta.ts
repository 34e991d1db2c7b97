/**
 * Ordinary differential equations y' = f(t, y) by the classical Runge–Kutta method of fourth order (Kutta 1901) with a
 * fixed step: for equations that are smooth and not stiff, and whose fastest motion is known beforehand, such as
 * oscillators. The error of a whole run falls with the fourth power of the step.
 */
export interface Flow {
  readonly size: number;
  /** Writes f(t, y) into `slope`; must not keep or change `state`. */
  readonly slopeAt: (time: number, state: Float64Array, slope: Float64Array) => void;
}

/** Moves `state` on by `step` in place. Nothing is allocated per step; not to be shared by two runs at once. */
export type Stepper = (state: Float64Array, time: number, step: number) => void;

export const rungeKutta = ({ size, slopeAt }: Flow): Stepper => {
  const first = new Float64Array(size);
  const second = new Float64Array(size);
  const third = new Float64Array(size);
  const fourth = new Float64Array(size);
  const between = new Float64Array(size);

  const ahead = (state: Float64Array, slope: Float64Array, by: number): Float64Array => {
    for (let i = 0; i < size; i++) between[i] = state[i]! + by * slope[i]!;
    return between;
  };

  return (state, time, step) => {
    const half = step / 2;
    slopeAt(time, state, first);
    slopeAt(time + half, ahead(state, first, half), second);
    slopeAt(time + half, ahead(state, second, half), third);
    slopeAt(time + step, ahead(state, third, step), fourth);
    const sixth = step / 6;
    for (let i = 0; i < size; i++)
      state[i] = state[i]! + sixth * (first[i]! + 2 * (second[i]! + third[i]!) + fourth[i]!);
  };
};
