/** Faults of the splice, the lead-in, the unit and the meter. */
import { AT_SPLICE, contact, loopBy, ohms, withLoop, type Maker, type Single } from './planted';

export const behind = {
  'nothing wrong': () => ({
    subject: null,
    severity: '',
    values: {},
    change: (circuit) => circuit,
    omits: []
  }),

  // somewhere on the only way: in a loop in series, at the splice, in the lead-in
  open: (random, _, circuit) => {
    const isString = circuit.strings.length === 1;
    const where = random.pick(
      isString ? (['loop', 'splice', 'lead-in'] as const) : (['splice', 'lead-in'] as const)
    );
    if (where === 'loop') {
      const id = random.pick(circuit.strings[0]!).loop;
      const share = random.share();
      return {
        subject: id,
        severity: `in ${id}`,
        values: {},
        change: (built) =>
          withLoop(built, id, (loop) => ({ ...loop, brokenAfter: Math.floor(share * (loop.turns - 1)) })),
        omits: []
      };
    }
    if (where === 'splice')
      return {
        subject: null,
        severity: 'at the splice',
        values: {},
        change: (built) => ({ ...built, splice: { isOpen: true } }),
        isBehindLoops: true,
        omits: AT_SPLICE
      };
    const share = random.between(0.05, 0.95);
    return {
      subject: null,
      severity: `at ${share.toFixed(2)} of the lead-in`,
      values: {},
      change: (built) => ({ ...built, leadIn: { ...built.leadIn, brokenAt: share * built.leadIn.length } }),
      isBehindLoops: true,
      omits: ['insulation between']
    };
  },

  // from what stands out of the temperature's doubt to what still lets a unit run
  'resistive splice': (random, _, __, isAny) => {
    const series = isAny ? random.byRatio(0.2, 100) : random.byRatio(1, 20);
    return {
      subject: null,
      severity: ohms(series),
      values: { resistance_ohm: series },
      change: (built) => ({ ...built, splice: { series } }),
      isBehindLoops: true,
      omits: AT_SPLICE
    };
  },

  'short at splice': (random) => {
    const between = contact(random);
    return {
      subject: null,
      severity: ohms(between),
      values: { resistance_ohm: between },
      change: (built) => ({ ...built, splice: { between } }),
      isBehindLoops: true,
      omits: AT_SPLICE
    };
  },

  // so far from the splice that metres can be told: a tenth of the way and ten metres at least
  'short in lead-in': (random, _, circuit, isAny) => {
    const { length } = circuit.leadIn;
    const nearest = isAny ? 0.02 * length : Math.max(0.1 * length, 10);
    const at = random.between(isAny ? 0.02 * length : 0.05 * length, length - nearest);
    const resistance = contact(random);
    return {
      subject: null,
      severity: `${ohms(resistance)} at ${at.toFixed(1)} of ${length} m`,
      values: { distance_m: at, resistance_ohm: resistance },
      change: (built) => ({ ...built, leadIn: { ...built.leadIn, short: { at, resistance } } }),
      isBehindLoops: true,
      omits: []
    };
  },

  // water between the conductors takes 3 to 40 times the circuit's reactance (of some 100 µH at 50 kHz), less to ground
  'wet splice': (random, site, circuit, isAny) => {
    const turns = loopBy(random, site, circuit).turns;
    const reactance = 2 * Math.PI * 50e3 * 11e-6 * turns * turns * circuit.strings[0]!.length;
    const between = reactance * random.byRatio(3, isAny ? 1_000 : 40);
    const leak = random.byRatio(2e3, 5e6);
    return {
      subject: null,
      severity: `${ohms(between)} between, ${ohms(leak)} to ground`,
      values: { resistance_ohm: between, leakage_ohm: leak },
      change: (built) => ({ ...built, splice: { between, leak } }),
      isBehindLoops: true,
      omits: AT_SPLICE
    };
  },

  'longer lead-in': (random, _, __, isAny) => {
    const extra = random.byRatio(isAny ? 5 : 25, 200);
    return {
      subject: null,
      severity: `${extra.toFixed(0)} m`,
      values: { extraLength_m: extra },
      change: (built) => ({ ...built, leadIn: { ...built.leadIn, length: built.leadIn.length + extra } }),
      isBehindLoops: true,
      omits: []
    };
  },

  'wrong setting': (random, site, circuit) => {
    const unit = site.units[0]!;
    const drawn = unit.settings_F[circuit.channel!.frequencySetting - 1]!;
    const setting = random.pick(unit.settings_F.filter((each) => each !== drawn));
    const number = unit.settings_F.indexOf(setting) + 1;
    return {
      subject: null,
      severity: `${number} for ${circuit.channel!.frequencySetting}`,
      values: { setting: number },
      change: (built) => ({ ...built, setting }),
      omits: []
    };
  },

  'wrong meter frequency': (random) => {
    const meterFrequency = random.pick([1e3, 5e3, 10e3, 20e3, 100e3, 200e3]);
    return {
      subject: null,
      severity: `${meterFrequency} Hz`,
      values: { frequency_Hz: meterFrequency },
      change: (built) => built,
      omits: [],
      meterFrequency
    };
  }
} satisfies Partial<Record<Single, Maker>>;
