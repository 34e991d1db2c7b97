/** A built circuit as a net, element by element, seen from each test point. */
import type { BuiltCable, BuiltCircuit, BuiltLoop } from './built';
import { dcPerMetre, pairOf } from './copper';
import { ladder, type PerMetre } from './ladder';
import { addLoop, internalInductance, turnResistances } from './loop-coils';
import { c, Net, type C, type Chain } from './nodal';
import { turnInductances } from './turns';

export type Point =
  /** Place in `loops`. */
  | { readonly at: 'loop'; readonly loop: number }
  | { readonly at: 'pull-box' }
  | { readonly at: 'cabinet' }
  /** At the cabinet, with nothing on the far end. */
  | { readonly at: 'lead-in' };

const dcPair = (conductor: number, temperature: number): PerMetre => ({
  resistance: 2 * dcPerMetre(conductor / 2, temperature),
  inductance: 0,
  capacitance: 0
});

const cableAt = (cable: BuiltCable, omega: number, temperature: number): PerMetre => {
  if (omega === 0) return dcPair(cable.conductor, temperature);
  const pair = pairOf(cable.spacing, cable.conductor, cable.permittivity, omega, temperature);
  return { ...pair, capacitance: cable.capacitance ?? pair.capacitance };
};

const tailAt = ({ wire, tail }: BuiltLoop, omega: number, temperature: number): Chain =>
  ladder(
    omega === 0
      ? dcPair(wire.conductor, temperature)
      : pairOf(wire.insulated, wire.conductor, wire.permittivity, omega, temperature),
    tail,
    omega
  );

export interface Road {
  readonly circuit: BuiltCircuit;
  /**
   * Between the terminals at a frequency in hertz, 0 for direct current; Ω. `more`: added to the mutual inductance of two
   * loops (places in `loops`), H, every turn alike.
   */
  readonly impedance: (point: Point, frequency: number, more?: (i: number, j: number) => number) => C;
}

/** Computes what every turn induces in every other once. */
export const buildRoad = (circuit: BuiltCircuit): Road => {
  const { loops, strings, leadIn, splice, temperature, pavementPermittivity } = circuit;
  const mutual = loops.map((a, i) => loops.map((b, j) => (j < i ? null : turnInductances(a, b))));
  const between = (i: number, s: number, j: number, t: number): number =>
    j < i ? mutual[j]![i]![t]![s]! : mutual[i]![j]![s]![t]!;

  const impedance: Road['impedance'] = (point, frequency, more) => {
    const omega = 2 * Math.PI * frequency;
    const net = new Net();
    const coils: { readonly loop: number; readonly turn: number }[] = [];
    const resistances = new Map<number, number[][]>();

    const wind = (index: number, cold: number): number => {
      const { hot, coils: made } = addLoop(net, loops[index]!, cold, omega, pavementPermittivity);
      made.forEach((coil, turn) => (coils[coil] = { loop: index, turn }));
      resistances.set(index, turnResistances(loops[index]!, omega, temperature));
      return hot;
    };
    const withTail = (index: number, near: number, common: number): void =>
      net.chain(near, wind(index, common), common, tailAt(loops[index]!, omega, temperature));

    const box = net.node();
    if (point.at === 'loop') withTail(point.loop, box, 0);
    else if (point.at !== 'lead-in')
      for (const string of strings) {
        let from = box;
        string.forEach(({ loop, reversed }, k) => {
          const to = k === string.length - 1 ? 0 : net.node();
          if (reversed) withTail(loop, to, from);
          else withTail(loop, from, to);
          from = to;
        });
      }
    // bridged turns of a loop that hangs on nothing are still a ring
    loops.forEach((loop, index) => {
      if (loop.bridged && omega > 0 && !resistances.has(index)) wind(index, 0);
    });

    const terminal = point.at === 'cabinet' || point.at === 'lead-in' ? addLeadIn(net, box, omega) : box;
    const inner = new Map(
      [...resistances.keys()].map((k) => [
        k,
        omega === 0 ? 0 : internalInductance(loops[k]!, omega, temperature)
      ])
    );
    const steel = omega === 0 ? undefined : circuit.steel?.(frequency);
    net.couple((p, q) => {
      const [a, b] = [coils[p]!, coils[q]!];
      const isOne = a.loop === b.loop;
      const own = isOne && a.turn === b.turn ? inner.get(a.loop)! : 0;
      const added = steel?.(a.loop, b.loop);
      const share = loops[a.loop]!.turns * loops[b.loop]!.turns;
      const shared = (added?.re ?? 0) + (more?.(a.loop, b.loop) ?? 0);
      const henries = between(a.loop, a.turn, b.loop, b.turn) + own + shared / share;
      const loss = isOne ? resistances.get(a.loop)![a.turn]![b.turn]! : 0;
      return c(loss - (omega * (added?.im ?? 0)) / share, omega * henries);
    });
    return net.impedance(terminal, 0);
  };

  const addLeadIn = (net: Net, box: number, omega: number): number => {
    const { cable, length, short, brokenAt } = leadIn;
    const constants = cableAt(cable, omega, temperature);
    const terminal = net.node();
    const far = splice.isOpen || splice.series !== undefined ? net.node() : box;
    const at = short?.at ?? brokenAt;
    if (at !== undefined) {
      const before = net.node();
      const behind = short ? before : net.node();
      net.chain(terminal, before, 0, ladder(constants, at, omega));
      net.chain(behind, far, 0, ladder(constants, length - at, omega));
      if (short) net.resistor(before, 0, short.resistance);
    } else net.chain(terminal, far, 0, ladder(constants, length, omega));
    if (splice.between !== undefined) net.resistor(far, 0, splice.between);
    if (splice.series !== undefined) net.resistor(far, box, splice.series);
    return terminal;
  };

  return { circuit, impedance };
};
