/** One loop as coils, one a turn, with what lies between and across them. */
import type { BuiltLoop } from './built';
import { dcPerMetre, EPSILON0, skin, transverseLoss } from './copper';
import { c, type Net } from './nodal';
import { columnsOf, turnLength, type Column } from './turns';

/**
 * Ω, between turns: each wire's own with skin effect, and the loss that the field of the others in its slot causes, which
 * for currents of any size is a square form in them: Σ over wires of loss·(Σ Iⱼ/2πd)².
 */
export const turnResistances = (loop: BuiltLoop, omega: number, temperature: number): number[][] => {
  const radius = loop.wire.conductor / 2;
  const own =
    turnLength(loop) *
    (omega === 0 ? dcPerMetre(radius, temperature) : skin(radius, omega, temperature).resistance);
  const table = Array.from({ length: loop.turns }, (_, i) =>
    Array.from({ length: loop.turns }, (__, j) => (i === j ? own : 0))
  );
  if (omega === 0) return table;
  // a loss in watts at peak values is R·I²/2
  const loss = 2 * transverseLoss(radius, omega, temperature);
  for (const { length, turns } of columnsOf(loop))
    turns.forEach((_, at) => {
      const field = fieldAt(loop, turns, at);
      for (let i = 0; i < loop.turns; i++)
        for (let j = 0; j < loop.turns; j++) table[i]![j]! += length * loss * field[i]! * field[j]!;
    });
  return table;
};

/** A/m a ampere of each turn, at one wire of a column. */
const fieldAt = (loop: BuiltLoop, turns: Column['turns'], at: number): number[] => {
  const field = Array.from({ length: loop.turns }, () => 0);
  turns.forEach((turn, other) => {
    if (other !== at) field[turn]! += 1 / (2 * Math.PI * loop.wire.insulated * (other - at));
  });
  return field;
};

/** H, within the copper of one turn. */
export const internalInductance = (loop: BuiltLoop, omega: number, temperature: number): number =>
  turnLength(loop) * skin(loop.wire.conductor / 2, omega, temperature).inductance;

/** F/m of one wire to the ground: coaxial layers of insulation, fill, pavement. */
const toGround = (loop: BuiltLoop, pavementPermittivity: number): number => {
  const { wire, slotWidth, depth, fillPermittivity } = loop;
  const wall = Math.max(slotWidth, wire.insulated) / 2;
  const far = Math.max(depth, 1.01 * wall);
  return (
    (2 * Math.PI * EPSILON0) /
    (Math.log(wire.insulated / wire.conductor) / wire.permittivity +
      Math.log((2 * wall) / wire.insulated) / fillPermittivity +
      Math.log(far / wall) / pavementPermittivity)
  );
};

export interface Ends {
  readonly hot: number;
  /** Numbers of its coils in the net, by turn. */
  readonly coils: readonly number[];
}

/**
 * The loop in a net, its last turn ending at the node `cold`. Between neighbouring turns the capacitance of the pair of wires; from every turn to ground that of a wire
 * along which the voltage rises evenly, the ground at the loop's own cold end (section 3 of the model).
 */
export const addLoop = (
  net: Net,
  loop: BuiltLoop,
  cold: number,
  omega: number,
  pavementPermittivity: number
): Ends => {
  const { turns, wire, bridged, brokenAfter } = loop;
  const length = turnLength(loop);
  // each turn has a node where it begins and one where it ends: the same as its neighbour's unless the wire is broken there
  const begins: number[] = [];
  const ends: number[] = [];
  for (let k = 0; k < turns; k++) {
    begins.push(k > 0 && brokenAfter !== k - 1 ? ends[k - 1]! : net.node());
    ends.push(k === turns - 1 ? cold : net.node());
  }
  const coils = begins.map((begin, k) => net.coil(begin, ends[k]!));
  if (omega > 0) {
    const between =
      (Math.PI * EPSILON0 * wire.permittivity * length) / Math.acosh(wire.insulated / wire.conductor);
    const ground = toGround(loop, pavementPermittivity) * length * omega;
    begins.forEach((begin, k) => {
      if (k > 0) net.admittance(begins[k - 1]!, begin, c(0, omega * between));
      net.twoToGround(begin, ends[k]!, cold, c(0, ground / 3), c(0, ground / 6));
    });
  }
  if (bridged)
    net.resistor(begins[bridged.first]!, ends[bridged.first + bridged.count - 1]!, bridged.resistance);
  return { hot: begins[0]!, coils };
};
