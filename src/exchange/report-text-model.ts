/** The electrical model in full for people: losses, capacitance, ranges, conditions, test plates, steel. */
import { typed } from '#units/digits';
import { LOSS_CAUSES, type CircuitReadout, type LoopReadout, type PlausibleRange } from '#analysis/results';
import type { QuantityKind } from '#units/kind';
import { blockIfAny } from './text-table';

export type Say = (value: number, kind: QuantityKind) => string;

const INPUTS = {
  dimensions: 'dimensions',
  depth: 'slot depth',
  wirePitch: 'wire pitch',
  leadInLength: 'lead-in length',
  temperature: 'temperature',
  permittivity: 'permittivity',
  vehicleHeight: 'vehicle height'
} as const;

const span = (low: number, high: number, kind: QuantityKind, say: Say): string =>
  `${say(low, kind)} … ${say(high, kind)}`;

export const capacitanceBlock = (loops: readonly LoopReadout[], say: Say): string[] =>
  blockIfAny('Capacitance of the loops, dry … wet pavement', [
    ['loop', 'between turns', 'to ground', 'C dry … wet', 'L apparent', 'self-resonance dry … wet'],
    ...loops.map((loop) => [
      loop.id,
      say(loop.turnCapacitance_F, 'capacitance'),
      say(loop.groundCapacitance_F, 'capacitance'),
      span(loop.capacitanceRange_F.dry, loop.capacitanceRange_F.wet, 'capacitance', say),
      say(loop.apparentInductance_H, 'inductance'),
      span(loop.selfResonanceRange_Hz.dry, loop.selfResonanceRange_Hz.wet, 'frequency', say)
    ])
  ]);

/** Only causes that some circuit has. */
export const lossBlock = (circuits: readonly CircuitReadout[], say: Say): string[] => {
  const of = (circuit: CircuitReadout, cause: (typeof LOSS_CAUSES)[number]): number =>
    circuit.losses.find((loss) => loss.cause === cause)?.resistance_ohm ?? 0;
  const causes = LOSS_CAUSES.filter((cause) =>
    circuits.some((circuit) => Math.abs(of(circuit, cause)) > 1e-6 * circuit.resistance_ohm)
  );
  return blockIfAny('Where the resistance at the terminals comes from', [
    ['circuit', ...causes, 'sum'],
    ...circuits.map((circuit) => [
      circuit.id,
      ...causes.map((cause) => say(of(circuit, cause), 'resistance')),
      say(circuit.resistance_ohm, 'resistance')
    ])
  ]);
};

const mostOf = ({ contributions }: PlausibleRange): string =>
  contributions[0] ? INPUTS[contributions[0].input] : '–';

export const rangeBlock = (circuits: readonly CircuitReadout[], say: Say): string[] =>
  blockIfAny('Plausible ranges, nineteen times in twenty', [
    ['circuit', 'figure', 'low … high', 'moved most by'],
    ...circuits.flatMap(({ id, ranges }) => {
      if (!ranges) return [];
      const row = (figure: string, range: PlausibleRange, kind: QuantityKind): string[] => [
        id,
        figure,
        span(range.low, range.high, kind, say),
        mostOf(range)
      ];
      return [
        row('L', ranges.inductance_H, 'inductance'),
        row('R', ranges.resistance_ohm, 'resistance'),
        row('R dc', ranges.resistanceDc_ohm, 'resistance'),
        row('Q', ranges.q, 'plain'),
        row('f', ranges.frequency_Hz, 'frequency'),
        ...ranges.loops.flatMap((loop) => [
          row(`${loop.id} alone, L`, loop.inductance_H, 'inductance'),
          row(`${loop.id} alone, R dc`, loop.resistanceDc_ohm, 'resistance')
        ]),
        ...ranges.responses.map(({ vehicle, worst }) => row(`ΔL/L ${vehicle}`, worst, 'ratio'))
      ];
    })
  ]);

export const conditionsBlock = (circuits: readonly CircuitReadout[], say: Say): string[] =>
  blockIfAny('Cold and hot, dry and wet', [
    ['circuit', 'when', 'f', 'L', 'R dc', 'R', 'Q'],
    ...circuits.flatMap(({ id, cold, hot, dry, wet }) =>
      [
        { when: `cold, ${say(cold.temperature_C, 'temperature')}`, at: cold },
        { when: `hot, ${say(hot.temperature_C, 'temperature')}`, at: hot },
        { when: 'dry', at: dry },
        { when: 'wet', at: wet }
      ].map(({ when, at }) => [
        id,
        when,
        say(at.frequency_Hz, 'frequency'),
        say(at.inductance_H, 'inductance'),
        say(at.resistanceDc_ohm, 'resistance'),
        say(at.resistance_ohm, 'resistance'),
        typed(at.q.toPrecision(3))
      ])
    )
  ]);

export const classBlock = (circuits: readonly CircuitReadout[], say: Say): string[] =>
  blockIfAny('Standard test plates', [
    ['circuit', 'plate', 'on the standard loop', 'best', 'worst', 'times threshold'],
    ...circuits.flatMap(({ id, classes }) =>
      (classes ?? []).map((each) => [
        id,
        each.vehicle,
        say(each.onStandardLoop, 'ratio'),
        say(each.best, 'ratio'),
        say(each.worst, 'ratio'),
        each.margin === null ? '–' : typed(each.margin.toPrecision(3))
      ])
    )
  ]);

export const steelBlock = (circuits: readonly CircuitReadout[], say: Say): string[] =>
  blockIfAny('What the steel in the pavement costs', [
    ['circuit', 'of', 'without', 'lost', 'clear below'],
    ...circuits.flatMap(({ id, steel }) => {
      if (!steel) return [];
      const { withoutSteel, clearDepth_m: clear } = steel;
      return [
        [
          id,
          'L',
          say(withoutSteel.inductance_H, 'inductance'),
          say(steel.inductanceShare, 'ratio'),
          clear === null ? '–' : say(clear, 'smallLength')
        ],
        [id, 'Q', typed(withoutSteel.q.toPrecision(3)), say(steel.qShare, 'ratio'), ''],
        ...steel.responses.map(({ vehicle, withoutSteel: response, share }) => [
          id,
          `ΔL/L ${vehicle}`,
          say(response, 'ratio'),
          say(share, 'ratio'),
          ''
        ])
      ];
    })
  ]);
