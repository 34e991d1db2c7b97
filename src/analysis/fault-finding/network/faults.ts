/** What each kind of fault changes. */
import type { ConcreteFault } from '../forward/contract';
import type { CauseKind } from '../results';
import type { Design } from './design';
import { soundState, type LeadInState, type LoopState, type State } from './state';

type Change = (state: State, fault: ConcreteFault, design: Design) => State;

const withLoop = (
  state: State,
  { subject }: ConcreteFault,
  { loops }: Design,
  change: (loop: LoopState, at: number) => Partial<LoopState>
): State => ({
  ...state,
  loops: state.loops.map((each, k) => (loops[k]!.id === subject ? { ...each, ...change(each, k) } : each))
});

const withLeadIn = (state: State, change: Partial<LeadInState>): State => ({
  ...state,
  leadIn: { ...state.leadIn, ...change }
});

/** Contacts of less are as good as none, Ω. */
const LEAST_CONTACT = 1e-6;

const contactOf = ({ values }: ConcreteFault): number => Math.max(LEAST_CONTACT, values.resistance_ohm ?? 0);

/** Adjacent ones. Those in the middle of the stack couple better with the rest than those at its ends. */
const shortedTurns = (fault: ConcreteFault, turns: number) => {
  const count = Math.min(turns, fault.values.shortedTurns ?? 1);
  const from = Math.min(fault.variant ?? Math.floor((turns - count) / 2), turns - count);
  return { from, count, resistance: contactOf(fault) };
};

/** Leaks at one place add as conductances. */
const both = (a: number | null, b: number): number => (a === null ? b : 1 / (1 / a + 1 / b));

const CHANGES: Readonly<Record<CauseKind, Change>> = {
  'nothing wrong': (state) => state,
  'something else': (state) => state,
  'shorted turns': (state, fault, design) =>
    withLoop(state, fault, design, ({ turns }) => ({ shorted: shortedTurns(fault, turns) })),
  'wrong turns': (state, fault, design) =>
    withLoop(state, fault, design, ({ turns }) => ({ turns: fault.values.turns ?? turns })),
  'wrong wire': (state, { subject }, design) => {
    const wire = design.wireOf(subject ?? '');
    return wire ? { ...state, loops: state.loops.map((loop) => ({ ...loop, wire })) } : state;
  },
  open: (state, fault, design) =>
    fault.subject === null
      ? withLeadIn(state, { isOpen: true })
      : withLoop(state, fault, design, () => ({ isOpen: true })),
  'resistive splice': (state, fault, design) => {
    const by = fault.values.resistance_ohm ?? 0;
    return fault.subject === null
      ? withLeadIn(state, { splice: state.leadIn.splice + by })
      : withLoop(state, fault, design, ({ splice }) => ({ splice: splice + by }));
  },
  'short at splice': (state, fault) =>
    withLeadIn(state, { shunt: state.leadIn.shunt + 1 / contactOf(fault), isSpliceShorted: true }),
  'short in lead-in': (state, fault) =>
    withLeadIn(state, {
      short: { distance: fault.values.distance_m ?? 0, resistance: contactOf(fault) }
    }),
  'reversed loop': (state, fault, design) =>
    withLoop(state, fault, design, ({ reversed }) => ({ reversed: !reversed })),
  'missing loop': (state, fault, design) => withLoop(state, fault, design, () => ({ isMissing: true })),
  'parallel for series': (state) => ({ ...state, strings: state.strings.map((_, k) => k) }),
  'series for parallel': (state) => ({ ...state, strings: state.strings.map(() => 0) }),
  'wet splice': (state, { values }) => {
    const leak = values.leakage_ohm ?? Infinity;
    // the water that leads to the ground leads from one wire to the other as well
    return withLeadIn(state, {
      shunt: state.leadIn.shunt + 1 / (values.resistance_ohm ?? leak),
      leak: both(state.leadIn.leak, leak),
      isSpliceWet: true
    });
  },
  'cut insulation': (state, fault, design) => {
    const by = fault.values.leakage_ohm ?? Infinity;
    return fault.subject === null
      ? withLeadIn(state, { leak: both(state.leadIn.leak, by) })
      : withLoop(state, fault, design, ({ leak }) => ({ leak: both(leak, by) }));
  },
  'steel near': (state, { values, variant = 0 }) => ({
    ...state,
    steel: values.depth_m === undefined ? null : { depth: values.depth_m, losses: variant }
  }),
  'other loop': (state, { subject }) => ({ ...state, other: subject }),
  'longer lead-in': (state, { values }) =>
    withLeadIn(state, { extra: state.leadIn.extra + (values.extraLength_m ?? 0) }),
  'wrong setting': (state, { values }) => ({ ...state, setting: values.setting ?? null }),
  'wrong meter frequency': (state, { values }) => ({ ...state, meterFrequency: values.frequency_Hz ?? null })
};

/** Of the lead-in, the unit and the meter: the loops and their wiring are as they were. */
const BEHIND_THE_BOX: ReadonlySet<CauseKind> = new Set<CauseKind>([
  'nothing wrong',
  'something else',
  'short at splice',
  'short in lead-in',
  'wet splice',
  'longer lead-in',
  'wrong setting',
  'wrong meter frequency'
]);

const isBeforeTheBox = ({ kind, subject }: ConcreteFault): boolean =>
  !BEHIND_THE_BOX.has(kind) &&
  !(subject === null && (kind === 'open' || kind === 'resistive splice' || kind === 'cut insulation'));

const textOf = ({ kind, subject, variant, values }: ConcreteFault): string =>
  `${kind} ${subject ?? ''} ${variant ?? ''} ${values.turns ?? ''} ${values.shortedTurns ?? ''} ${values.resistance_ohm ?? ''} ${values.depth_m ?? ''}`;

/** What a loop is wound of comes before what is wrong with the winding. */
const isWinding = ({ kind }: ConcreteFault): boolean => kind === 'wrong turns' || kind === 'wrong wire';

/** Otherwise in the order of the list. */
export const stateWith = (design: Design, list: readonly ConcreteFault[]): State => {
  const faults =
    list.length < 2 ? list : [...list.filter(isWinding), ...list.filter((fault) => !isWinding(fault))];
  const state = faults.reduce(
    (before, fault) => CHANGES[fault.kind](before, fault, design),
    soundState(design)
  );
  if (list.length === 0) return state;
  return { ...state, key: faults.filter(isBeforeTheBox).map(textOf).join() };
};
