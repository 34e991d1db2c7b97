/** Faults of what lies in the slot. */
import { builtInWires } from '#plan/catalogue/wires';
import { wireNamed } from './as-drawn';
import { contact, loopBy, ohms, withLoop, type Maker, type Single } from './planted';
import { steelUnder } from './steel-under';

export const inLoops = {
  // one to all but one, bridged where they lie upon one another; copper on copper
  'shorted turns': (random, site, circuit) => {
    const { id, turns } = loopBy(random, site, circuit);
    const count = random.whole(1, turns - 1);
    const bridged = { first: random.whole(0, turns - count), count, resistance: contact(random) };
    return {
      subject: id,
      severity: `${count} of ${turns} by ${ohms(bridged.resistance)}`,
      variant: bridged.first,
      values: { shortedTurns: count, resistance_ohm: bridged.resistance },
      change: (built) => withLoop(built, id, (loop) => ({ ...loop, bridged })),
      omits: []
    };
  },

  // miscounted by one, sometimes by two
  'wrong turns': (random, site, circuit) => {
    const { id, turns } = loopBy(random, site, circuit);
    const wound = random.pick(
      [turns - 2, turns - 1, turns - 1, turns + 1, turns + 1, turns + 2].filter((n) => n >= 1)
    );
    return {
      subject: id,
      severity: `${wound} for ${turns}`,
      values: { turns: wound },
      change: (built) => withLoop(built, id, (loop) => ({ ...loop, turns: wound })),
      omits: []
    };
  },

  // the whole circuit from the wrong drum
  'wrong wire': (random, site, circuit) => {
    const drawn = loopBy(random, site, circuit).wire;
    const wire = random.pick(builtInWires.filter(({ id }) => id !== drawn)).id;
    return {
      subject: wire,
      severity: `${wire} for ${drawn}`,
      values: {},
      change: (built) => ({
        ...built,
        loops: built.loops.map((loop) => ({ ...loop, wire: wireNamed(wire, site) }))
      }),
      omits: []
    };
  },

  'steel near': (random, site, circuit) => {
    const steel = steelUnder(random, site, circuit);
    return {
      subject: null,
      severity: steel.severity,
      values: { depth_m: steel.depth },
      change: (built) => ({ ...built, steel: steel.adds }),
      omits: []
    };
  },

  // well below anything that passes as sound (50 MΩ)
  'cut insulation': (random, _, circuit, isAny) => {
    const leak = random.byRatio(5e3, isAny ? 3e7 : 5e6);
    if (random.chance(0.3))
      return {
        subject: null,
        severity: `${ohms(leak)} in the lead-in`,
        values: { leakage_ohm: leak },
        change: (built) => ({ ...built, leadIn: { ...built.leadIn, leak } }),
        omits: []
      };
    const { loop: id } = random.pick(circuit.strings.flat());
    return {
      subject: id,
      severity: `${ohms(leak)} in ${id}`,
      values: { leakage_ohm: leak },
      change: (built) => withLoop(built, id, (loop) => ({ ...loop, leak })),
      omits: []
    };
  }
} satisfies Partial<Record<Single, Maker>>;
