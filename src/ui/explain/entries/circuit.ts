/** Figures at a unit's terminals. */
import { temperaturesOf } from '#plan/catalogue/tolerances';
import type { ExplainedId } from '../topic';
import { given, type Entry, type Facts, type Given } from '../facts';

const frequency = ({ circuit, loop }: Facts): Given =>
  given('f', 'explain.in.frequency', circuit?.frequency_Hz ?? loop?.frequency_Hz, 'frequency');
const inductance = ({ circuit }: Facts): Given =>
  given('L', 'quantity.terminalInductance', circuit?.inductance_H, 'inductance');
const resistance = ({ circuit }: Facts): Given =>
  given('R', 'quantity.resistance', circuit?.resistance_ohm, 'resistance');
const temperature = ({ site }: Facts): Given =>
  given('T', 'explain.in.temperature', site.temperature_C, 'temperature');

/** Its loops' own inductances, and the metres of lead-in. */
const parts = ({ circuit, assessment }: Facts): readonly Given[] => [
  ...(circuit?.drawn.strings.flat() ?? []).map(({ loop: id }) =>
    given(
      `L_{${id.replace(/[{}_^\s]/g, '')}}`,
      'explain.in.loopInductance',
      assessment?.loops.find((each) => each.id === id)?.inductance_H,
      'inductance'
    )
  ),
  given(
    'l_{in}',
    'explain.in.leadIn',
    circuit &&
      [circuit.drawn.leadIn, ...(circuit.drawn.leadIn.further ?? [])].reduce(
        (sum, { length }) => sum + length,
        0
      ),
    'length'
  )
];

const setting = ({ circuit, site }: Facts): number | undefined => {
  const channel = circuit?.drawn.channel;
  const unit = site.units.find(({ id }) => id === channel?.unit);
  return channel ? unit?.settings_F[channel.frequencySetting - 1] : undefined;
};

const shares = ({ circuit }: Facts): readonly Given[] =>
  (circuit?.losses ?? [])
    .filter(({ resistance_ohm }) => resistance_ohm !== 0)
    .map(({ cause, resistance_ohm }) => given('', `losses.${cause}`, resistance_ohm, 'resistance'));

const loopShares = ({ loop }: Facts): readonly Given[] =>
  loop
    ? [
        given('', 'losses.copper', loop.losses.copperDc_ohm, 'resistance'),
        given('', 'losses.skin', loop.losses.skin_ohm, 'resistance'),
        given('', 'losses.proximity', loop.losses.proximity_ohm, 'resistance'),
        given('', 'losses.pavement', loop.losses.pavement_ohm, 'resistance'),
        given('', 'losses.steel', loop.losses.steel_ohm, 'resistance'),
        given('', 'losses.added', loop.losses.added_ohm, 'resistance')
      ]
    : [];

export const circuitEntries = {
  'terminal-inductance': {
    formulas: ['L = frac{Im Z}{2πf}', 'Z = Z_0 frac{Z_L + Z_0 tanh (γ l)}{Z_0 + Z_L tanh (γ l)}'],
    inputs: (facts) => [frequency(facts), ...parts(facts)],
    result: inductance
  },
  'terminal-magnetic': {
    formulas: ['L_{mag} = frac{Im Z}{2πf} , C = 0'],
    inputs: (facts) => [frequency(facts), ...parts(facts)],
    result: ({ circuit }) =>
      given('L_{mag}', 'quantity.magnetic', circuit?.magneticInductance_H, 'inductance')
  },
  'terminal-resistance': {
    formulas: ['R = Re Z', 'R = ∑_i R_i frac{| I_i |^2}{| I |^2}'],
    inputs: (facts) => [frequency(facts), temperature(facts), ...shares(facts)],
    result: resistance
  },
  'terminal-dc': {
    formulas: ['R_{DC} = R_{loops} + R_{tails} + R_{in}'],
    inputs: (facts) => [temperature(facts), ...parts(facts).slice(-1)],
    result: ({ circuit }) => given('R_{DC}', 'quantity.dc', circuit?.resistanceDc_ohm, 'resistance')
  },
  'terminal-q': {
    formulas: ['Q = frac{Im Z}{Re Z} = frac{2πf L}{R}'],
    inputs: (facts) => [frequency(facts), inductance(facts), resistance(facts)],
    result: ({ circuit }) => given('Q', 'quantity.q', circuit?.q, 'plain')
  },
  frequency: {
    formulas: ['f = frac{1}{2π sqrt{L C}} ( 1 − frac{1}{8 Q^2} )'],
    inputs: (facts) => [
      given('C', 'explain.in.setting', setting(facts), 'capacitance'),
      inductance(facts),
      given('Q', 'quantity.q', facts.circuit?.q, 'plain')
    ],
    result: frequency
  },
  losses: {
    formulas: ['R = ∑_i R_i frac{| I_i |^2}{| I |^2}'],
    inputs: (facts) => (facts.circuit ? shares(facts) : loopShares(facts)),
    result: (facts) =>
      facts.circuit
        ? resistance(facts)
        : given('R', 'quantity.resistance', facts.loop?.resistanceAc_ohm, 'resistance')
  },
  temperature: {
    formulas: ['ρ (T) = ρ_{20} ( 1 + α ( T − 20 ) )'],
    inputs: ({ site, circuit }) => [
      given('T_{cold}', 'weather.coldest', temperaturesOf(site)[0], 'temperature'),
      given('T_{hot}', 'weather.hottest', temperaturesOf(site)[1], 'temperature'),
      given('R_{cold}', 'explain.in.coldResistance', circuit?.cold.resistance_ohm, 'resistance')
    ],
    result: ({ circuit }) =>
      given('R_{hot}', 'explain.in.hotResistance', circuit?.hot.resistance_ohm, 'resistance')
  },
  moisture: {
    formulas: ['L_{app} = frac{L}{1 − (2πf)^2 L C (ε_p)}'],
    inputs: ({ site, circuit }) => [
      given('ε_p', 'explain.in.pavement', site.pavement.relativePermittivity, 'plain'),
      given('L_{dry}', 'explain.in.dryInductance', circuit?.dry.inductance_H, 'inductance')
    ],
    result: ({ circuit }) =>
      given('L_{wet}', 'explain.in.wetInductance', circuit?.wet.inductance_H, 'inductance')
  }
} satisfies Partial<Record<ExplainedId, Entry>>;
