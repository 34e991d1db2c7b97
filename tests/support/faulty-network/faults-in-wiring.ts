/** Faults of how loops are joined. */
import type { Maker, Single } from './planted';

export const inWiring = {
  'reversed loop': (random, _, circuit) => {
    const { loop } = random.pick(circuit.strings.flat());
    return {
      subject: loop,
      severity: loop,
      values: {},
      change: (built) => ({
        ...built,
        strings: built.strings.map((string) =>
          string.map((each) =>
            built.loops[each.loop]!.id === loop ? { ...each, reversed: !each.reversed } : each
          )
        )
      }),
      isBehindLoops: true,
      omits: []
    };
  },

  // jumped over at the pull box, or a string of its own left off
  'missing loop': (random, _, circuit) => {
    const { loop } = random.pick(circuit.strings.flat());
    return {
      subject: loop,
      severity: loop,
      values: {},
      change: (built) => ({
        ...built,
        strings: built.strings
          .map((string) => string.filter((each) => built.loops[each.loop]!.id !== loop))
          .filter(({ length }) => length > 0)
      }),
      isBehindLoops: true,
      omits: ['loop of the subject']
    };
  },

  'parallel for series': () => ({
    subject: null,
    severity: '',
    values: {},
    change: (built) => ({ ...built, strings: built.strings.flat().map((each) => [each]) }),
    isBehindLoops: true,
    omits: []
  }),

  'series for parallel': () => ({
    subject: null,
    severity: '',
    values: {},
    change: (built) => ({ ...built, strings: [built.strings.flat()] }),
    isBehindLoops: true,
    omits: []
  }),

  // crossed at the pull box: the neighbour's loops on this lead-in
  'other loop': (random, site, circuit) => {
    const other = random.pick(site.circuits.filter(({ id }) => id !== circuit.id));
    return {
      subject: other.id,
      severity: other.id,
      values: {},
      change: (built, others) => {
        const { loops, strings } = others(other.id);
        return { ...built, loops, strings };
      },
      isBehindLoops: true,
      omits: ['pull-box']
    };
  }
} satisfies Partial<Record<Single, Maker>>;
