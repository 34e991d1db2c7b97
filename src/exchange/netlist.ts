/**
 * One circuit at one frequency as a netlist in SPICE's syntax: coupled inductors with their losses and what lies across
 * them, lines for tails and lead-in, a source of one ampere at the terminals. The voltage of node `in` is then the
 * impedance. Values hold at that frequency alone, since skin effect and steel change with it.
 */
import { equivalentCircuit, type EquivalentCircuit } from '#analysis/electrical/equivalent';
import type { Site } from '#plan/schema';
import { lineElements } from './netlist-line';
import { figure, safeWord } from './netlist-words';

/** The two ends of a loop's tail at the pull box, and of the loop itself. The return is one conductor all the way. */
interface Nodes {
  readonly near: string;
  readonly far: string;
  readonly back: string;
}

const BOX = 'box';
const TERMINALS = 'in';

/** Loops of a string hang one behind the other between the box and the common return. */
const nodesOf = ({ loops }: EquivalentCircuit): Nodes[] =>
  loops.map(({ string }, k) => {
    const isFirst = loops.findIndex((each) => each.string === string) === k;
    const isLast = loops.findLastIndex((each) => each.string === string) === k;
    return {
      near: isFirst ? BOX : `s${k}`,
      far: `t${k + 1}`,
      back: isLast ? '0' : `s${k + 1}`
    };
  });

/** Coil, resistance and what steel couples resistively, in series in the sense of the winding. */
const coil = (
  { loops, inductance, resistance }: EquivalentCircuit,
  k: number,
  { far, back }: Nodes
): string[] => {
  const n = k + 1;
  const [start, end] = loops[k]!.reversed ? [back, far] : [far, back];
  const lossy = resistance[k]!.flatMap((value, j) => (j !== k && value !== 0 ? [{ j, value }] : []));
  const isSensed = resistance.some((row, j) => j !== k && row[k] !== 0);
  const steps = [
    (a: string, b: string) => `L${n} ${a} ${b} ${figure(inductance[k]![k]!)}`,
    (a: string, b: string) => `R${n} ${a} ${b} ${figure(resistance[k]![k]!)}`,
    ...(isSensed ? [(a: string, b: string) => `V${n} ${a} ${b} 0`] : []),
    ...lossy.map(
      ({ j, value }) =>
        (a: string, b: string) =>
          `H${n}_${j + 1} ${a} ${b} V${j + 1} ${figure(value)}`
    )
  ];
  const node = (step: number): string => {
    if (step === 0) return start;
    return step === steps.length ? end : `w${n}_${step}`;
  };
  return steps.map((step, at) => step(node(at), node(at + 1)));
};

const loopLines = (circuit: EquivalentCircuit): string[] => {
  const nodes = nodesOf(circuit);
  return circuit.loops.flatMap((loop, k) => {
    const n = k + 1;
    const sense = loop.reversed ? ', reversed' : '';
    const { near, far, back } = nodes[k]!;
    const tail = lineElements(`tail${n}`, near, far, back, loop.tail);
    return [
      `* loop ${safeWord(loop.id)} in string ${loop.string + 1}${sense}`,
      ...coil(circuit, k, { near, far: tail.far, back }),
      ...(loop.capacitance > 0 ? [`C${n} ${tail.far} ${back} ${figure(loop.capacitance)}`] : []),
      ...(loop.conductance > 0 ? [`RG${n} ${tail.far} ${back} ${figure(1 / loop.conductance)}`] : []),
      ...tail.lines
    ];
  });
};

const couplings = ({ inductance }: EquivalentCircuit): string[] =>
  inductance.flatMap((row, i) =>
    row.slice(0, i).flatMap((mutual, j) => {
      const k = mutual / Math.sqrt(inductance[i]![i]! * inductance[j]![j]!);
      return k === 0 ? [] : [`K${j + 1}_${i + 1} L${j + 1} L${i + 1} ${figure(k)}`];
    })
  );

/** Cables from the terminals to the box, which a source of nothing joins to the last of them. */
const leadInLines = ({ leadIn }: EquivalentCircuit): string[] => {
  const lines: string[] = [];
  let near = TERMINALS;
  [...leadIn].reverse().forEach((line, k) => {
    const cable = lineElements(`lead${k + 1}`, near, `c${k + 1}`, '0', line);
    lines.push(...cable.lines);
    near = cable.far;
  });
  return [...lines, `Vbox ${near} ${BOX} 0`];
};

const netlistText = (circuit: EquivalentCircuit): string =>
  [
    `* circuit ${safeWord(circuit.id)} at ${figure(circuit.frequency)} Hz, SI units`,
    ...loopLines(circuit),
    ...couplings(circuit),
    '* lead-in, from the terminals to the pull box',
    ...leadInLines(circuit),
    '* one ampere into the terminals: the voltage there is the impedance',
    `I1 0 ${TERMINALS} DC 0 AC 1`,
    `.ac lin 1 ${figure(circuit.frequency)} ${figure(circuit.frequency)}`,
    `.print ac vr(${TERMINALS}) vi(${TERMINALS})`,
    '.end',
    ''
  ].join('\n');

/** `frequency` in hertz, the circuit's own where it is not given. Null for an unknown circuit or one that cannot be wound. */
export const netlistOf = (site: Site, circuitId: string, frequency?: number): string | null => {
  const circuit = site.circuits.find(({ id }) => id === circuitId);
  const equivalent = circuit && equivalentCircuit(site, circuit, frequency);
  return equivalent ? netlistText(equivalent) : null;
};
