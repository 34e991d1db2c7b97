/** The single faults that a circuit can have, with grids for what nobody knows of them. */
import { wiresOf } from '#plan/catalogue/wires';
import type { CauseKind } from '../results';
import { lengthOf } from '../network/design';
import { LOSS_DEPTHS, type SteelNear } from '../network/steel-near';
import { MORE_TURNS } from '../network/turn-store';
import type { Hypothesis, Unknown, UnknownName } from './contract';
import type { Core } from './core';

const evenly = (
  name: UnknownName,
  scale: Unknown['scale'],
  values: readonly number[],
  weightOf: (value: number) => number = () => 1
): Unknown => {
  const raw = values.map(weightOf);
  const sum = raw.reduce((all, each) => all + each, 0);
  return { name, scale, values, weights: raw.map((each) => each / sum) };
};

const logarithmic = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, k) => low * (high / low) ** (k / (count - 1)));

/** Of a contact between conductors, Ω: metal on metal up to corroded strands. */
const contact = (count: number): Unknown => evenly('resistance_ohm', 'log', logarithmic(0.01, 3, count));

/** Common practice: a bad splice adds from a few tenths of an ohm; from 5 kΩ on it is as good as open. */
const spliceResistance = (): Unknown => evenly('resistance_ohm', 'log', logarithmic(0.2, 5_000, 18));
const leakage = (low: number): Unknown => evenly('leakage_ohm', 'log', logarithmic(low, 3e7, 16));

/** Of water between the two wires of a splice, Ω: centimetres of it, where the ground is farther. */
const betweenWires = (): Unknown => evenly('resistance_ohm', 'log', logarithmic(50, 50_000, 13));

/** At which usual meters measure, Hz. */
const METER_FREQUENCIES = [100, 120, 1_000, 5_000, 10_000, 20_000, 50_000, 100_000, 200_000];

const cause = (kind: CauseKind, subject: string | null, ...unknowns: readonly Unknown[]): Hypothesis => ({
  ...{ kind, subject, unknowns }
});

/** Beyond this many from an end of the stack, up to ten turns, one takes as much away as in the middle but for some 6 %. */
const MOST_FROM_END = 3;

/**
 * From an end of the stack to its middle, whose sides are alike: one of six turns takes away 65 % of the inductance at the
 * end of a usual stack, 75 % in its middle. With fewer than three turns all places are the same.
 */
const shortedTurns = (id: string, turns: number): Hypothesis[] => {
  if (turns < 2) return [];
  const counts = Array.from({ length: turns - 1 }, (_, k) => k + 1);
  const unknowns = [evenly('shortedTurns', 'whole', counts, (count) => 1 / count), contact(5)];
  const middle = cause('shorted turns', id, ...unknowns);
  const fromEnd = Math.min(MOST_FROM_END, Math.floor((turns - 1) / 2));
  return [middle, ...Array.from({ length: fromEnd }, (_, variant) => ({ ...middle, variant }))];
};

const ofLoops = ({ nominal }: Core): Hypothesis[] =>
  nominal.design.loops.flatMap(({ id, loop: { turns } }) => {
    const counts = Array.from({ length: turns + MORE_TURNS }, (_, k) => k + 1);
    const other = counts.filter((count) => count !== turns);
    return [
      ...shortedTurns(id, turns),
      // a miscount by one is likelier than by two
      cause(
        'wrong turns',
        id,
        evenly('turns', 'whole', other, (count) => 0.4 ** Math.abs(count - turns))
      ),
      cause('open', id),
      cause('cut insulation', id, leakage(1_000))
    ];
  });

/** What takes two loops: which of a string's splices is bad, or whether its first or its last loop is reversed, no meter tells. */
const ofWiring = ({ nominal, circuit }: Core): Hypothesis[] => {
  const { loops } = nominal.design;
  if (loops.length < 2) return [];
  const isFirstOfString = (k: number): boolean =>
    loops.findIndex(({ string }) => string === loops[k]!.string) === k;
  return [
    ...loops.flatMap(({ id }, k) => [
      ...(isFirstOfString(k) ? [cause('resistive splice', id, spliceResistance())] : []),
      cause('reversed loop', id),
      cause('missing loop', id)
    ]),
    ...(circuit.strings.some((string) => string.length > 1) ? [cause('parallel for series', null)] : []),
    ...(circuit.strings.length > 1 ? [cause('series for parallel', null)] : [])
  ];
};

const PLACES = 24;

const ofLeadIn = ({ nominal }: Core): Hypothesis[] => {
  const total = lengthOf(nominal.design);
  const always = [
    cause('open', null),
    cause('resistive splice', null, spliceResistance()),
    cause('short at splice', null, contact(6)),
    cause('wet splice', null, leakage(1_000), betweenWires()),
    cause('cut insulation', null, leakage(1_000))
  ];
  if (total === 0) return always;
  const distances = Array.from({ length: PLACES }, (_, k) => (total * (k + 0.5)) / PLACES);
  return [
    ...always,
    cause('short in lead-in', null, evenly('distance_m', 'linear', distances), contact(5)),
    cause(
      'longer lead-in',
      null,
      evenly('extraLength_m', 'log', logarithmic(4, Math.max(200, 2 * total), 14))
    )
  ];
};

const ofWires = ({ site, nominal }: Core): Hypothesis[] => {
  const drawn = nominal.design.loops.map(({ model }) => model.wire);
  const seen = new Set<string>();
  return wiresOf(site).flatMap(({ id, conductorDiameter, insulatedDiameter }) => {
    const isDrawn = drawn.every(
      (wire) => wire.conductorDiameter === conductorDiameter && wire.insulatedDiameter === insulatedDiameter
    );
    const text = `${conductorDiameter} ${insulatedDiameter}`;
    if (isDrawn || seen.has(text)) return [];
    seen.add(text);
    return [cause('wrong wire', id)];
  });
};

const ofUnit = ({ site, circuit }: Core): Hypothesis[] => {
  const { channel } = circuit;
  const unit = site.units.find(({ id }) => id === channel?.unit);
  if (!unit || channel?.frequency_Hz !== null) return [];
  const designed = unit.settings_F[channel.frequencySetting - 1];
  const other = unit.settings_F.flatMap((farads, k) => (farads === designed ? [] : [k + 1]));
  return other.length === 0 ? [] : [cause('wrong setting', null, evenly('setting', 'whole', other))];
};

export const hypothesesOf = (core: Core, { depths }: SteelNear): readonly Hypothesis[] => [
  ...ofLoops(core),
  ...ofWires(core),
  ...ofWiring(core),
  ...ofLeadIn(core),
  ...LOSS_DEPTHS.map((_, variant) => ({
    ...cause('steel near', null, evenly('depth_m', 'log', depths)),
    variant
  })),
  ...core.others.map((id) => cause('other loop', id)),
  ...ofUnit(core),
  cause('wrong meter frequency', null, evenly('frequency_Hz', 'whole', METER_FREQUENCIES))
];
