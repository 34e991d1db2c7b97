/** What was worked out of states, by what stands before the lead-in: the grid of a cause asks for the same many times. */
import { complex, type Complex } from '#physics/numeric/complex';
import type { Point, Windings } from './coils';
import { interpolated, type OfFrequency } from './interpolated';
import type { State } from './state';

/** In the place of a loop's number: the pull box. */
export const BOX = -1;

interface Solved extends Point {
  readonly place: number;
  readonly stood: object | null;
  readonly impedance: Complex | null;
}

interface Memo {
  readonly windings: Windings;
  /** At a place exactly at a point; `stood`: the vehicle there, by identity. */
  at(place: number, point: Point, stood: object | null, make: () => Complex | null): Complex | null;
  /** At the pull box, from frequencies near to this one. */
  smoothly(point: Point, make: (frequency: number) => Complex | null): Complex | null;
}

/** More points than all loops of a circuit have figures: then those of the unit pile up, each state's its own. */
const MOST_POINTS = 300;

const createMemo = (windings: Windings): Memo => {
  const points: Solved[] = [];
  const tables = new Map<number, OfFrequency>();
  return {
    windings,
    at: (place, { frequency, temperature }, stood, make) => {
      for (const each of points)
        if (
          each.frequency === frequency &&
          each.place === place &&
          each.temperature === temperature &&
          each.stood === stood
        )
          return each.impedance;
      const impedance = make();
      if (points.length >= MOST_POINTS) points.length = 0;
      points.push({ frequency, temperature, place, stood, impedance });
      return impedance;
    },
    smoothly: ({ frequency, temperature }, make) => {
      let table = tables.get(temperature);
      if (!table) {
        // resistance and inductance change less with frequency than the impedance does
        table = interpolated((node) => {
          const impedance = make(node);
          return impedance ? [impedance.re, impedance.im / node] : [];
        });
        tables.set(temperature, table);
      }
      const [re, perHertz] = table(frequency);
      return re === undefined || perHertz === undefined ? null : complex(re, perHertz * frequency);
    }
  };
};

interface Running {
  readonly capacitance: number;
  readonly temperature: number;
  readonly frequency: number | null;
}

export interface Memos {
  of(state: State): Memo;
  /** The unit's frequency, Hz; null for none. */
  running(state: State, capacitance: number, temperature: number, make: () => number | null): number | null;
}

/** States whose memos are kept before all are dropped. */
const MOST_STATES = 3_000;

export const createMemos = (windingsOf: (state: State) => Windings): Memos => {
  const known = new Map<string, Memo>();
  let last: { readonly state: State; readonly memo: Memo } | null = null;
  let runnings: { readonly state: State; readonly all: Running[] } | null = null;
  return {
    of: (state) => {
      if (last?.state === state) return last.memo;
      const key = state.other === null ? state.key : `other ${state.other}`;
      let memo = known.get(key);
      if (!memo) {
        if (known.size >= MOST_STATES) known.clear();
        memo = createMemo(windingsOf(state));
        known.set(key, memo);
      }
      last = { state, memo };
      return memo;
    },
    running: (state, capacitance, temperature, make) => {
      if (runnings?.state !== state) runnings = { state, all: [] };
      const found = runnings.all.find(
        (each) => each.capacitance === capacitance && each.temperature === temperature
      );
      if (found) return found.frequency;
      const frequency = make();
      runnings.all.push({ capacitance, temperature, frequency });
      return frequency;
    }
  };
};
