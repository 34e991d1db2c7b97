/** How a further reading is taken, what to mind, and what it costs to take it. */
import type { Quantity, Site, TestPoint } from '#plan/schema';
import type { MessageKey } from '#i18n/message';
import type { MeasuringPlace, Told } from '../results';

interface Way {
  readonly how: MessageKey;
  readonly isInsulationTester: boolean;
}

const meter = (how: MessageKey): Way => ({ how, isInsulationTester: false });
const tester = (how: MessageKey): Way => ({ how, isInsulationTester: true });

/** What can be read where, and how. */
export const WAYS: Readonly<Record<TestPoint, Readonly<Partial<Record<Quantity, Way>>>>> = {
  loop: {
    resistanceDc_ohm: meter('causes.how.loop.resistanceDc_ohm'),
    inductance_H: meter('causes.how.loop.inductance_H'),
    q: meter('causes.how.loop.q'),
    insulation_ohm: tester('causes.how.loop.insulation_ohm')
  },
  'pull-box': {
    resistanceDc_ohm: meter('causes.how.pull-box.resistanceDc_ohm'),
    inductance_H: meter('causes.how.pull-box.inductance_H'),
    q: meter('causes.how.pull-box.q'),
    insulation_ohm: tester('causes.how.pull-box.insulation_ohm')
  },
  cabinet: {
    resistanceDc_ohm: meter('causes.how.cabinet.resistanceDc_ohm'),
    inductance_H: meter('causes.how.cabinet.inductance_H'),
    q: meter('causes.how.cabinet.q'),
    insulation_ohm: tester('causes.how.cabinet.insulation_ohm'),
    insulationBetween_ohm: tester('causes.how.cabinet.insulationBetween_ohm')
  },
  unit: {
    inductance_H: meter('causes.how.unit.inductance_H'),
    frequency_Hz: meter('causes.how.unit.frequency_Hz'),
    deltaLOverL: meter('causes.how.unit.deltaLOverL')
  }
};

/** What taking it costs, as the bits that it has to tell more for being preferred: judgement. */
const COSTS: Readonly<Record<TestPoint, number>> = { unit: 0, cabinet: 0.02, 'pull-box': 0.08, loop: 0.12 };
const COST_OF_A_VEHICLE = 0.08;
const COST_OF_A_TESTER = 0.02;
/** Two wires are parted at both ends for it. */
const COST_OF_BETWEEN = 0.1;

export const costOf = (testPoint: TestPoint, quantity: Quantity): number =>
  COSTS[testPoint] +
  (quantity === 'deltaLOverL' ? COST_OF_A_VEHICLE : 0) +
  (quantity === 'insulationBetween_ohm' ? COST_OF_BETWEEN : 0) +
  (WAYS[testPoint][quantity]?.isInsulationTester === true ? COST_OF_A_TESTER : 0);

const PREFIX = 'causes.'.length;
const plain = (key: MessageKey): Told => ({ key: key.slice(PREFIX), values: {} });

export const SAFETY_KEYS = [
  'causes.safety.mains',
  'causes.safety.traffic',
  'causes.safety.tester',
  'causes.safety.gate'
] as const satisfies readonly MessageKey[];

/** Null where it cannot be read there. */
export const howTo = (
  site: Pick<Site, 'marks'>,
  { testPoint, quantity }: Pick<MeasuringPlace, 'testPoint'> & { readonly quantity: Quantity }
): { readonly how: Told; readonly safety: readonly Told[] } | null => {
  const way = WAYS[testPoint][quantity];
  if (!way) return null;
  const isInside = testPoint === 'cabinet' || testPoint === 'unit';
  // between its wires a lead-in is measured with its splice at the pull box open
  const isOutside = !isInside || quantity === 'deltaLOverL' || quantity === 'insulationBetween_ohm';
  const hasGate = site.marks.some(({ kind }) => kind === 'gate');
  // a unit that loses its loop calls, and one without a unit calls nobody
  const isMoved = testPoint !== 'unit' || quantity === 'deltaLOverL';
  const keys: readonly (MessageKey | false)[] = [
    isInside && 'causes.safety.mains',
    isOutside && 'causes.safety.traffic',
    way.isInsulationTester && 'causes.safety.tester',
    hasGate && isMoved && 'causes.safety.gate'
  ];
  return { how: plain(way.how), safety: keys.flatMap((key) => (key === false ? [] : [plain(key)])) };
};
