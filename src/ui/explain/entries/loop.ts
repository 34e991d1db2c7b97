/** Figures of a loop by itself. */
import type { ExplainedId } from '../topic';
import { given, perimeterOf, type Entry, type Facts, type Given } from '../facts';

const turns = ({ loop }: Facts): Given => given('N', 'explain.in.turns', loop?.drawn.turns, 'count');
const wire = ({ loop }: Facts): Given =>
  given('2a', 'explain.in.conductor', loop?.wireUsed?.conductorDiameter, 'smallLength');
const insulated = ({ loop }: Facts): Given =>
  given('D', 'explain.in.insulated', loop?.wireUsed?.insulatedDiameter, 'smallLength');
const round = ({ loop }: Facts): Given =>
  given('P', 'explain.in.perimeter', perimeterOf(loop?.drawn), 'length');
const depth = ({ loop }: Facts): Given =>
  given('h', 'explain.in.slotDepth', loop?.drawn.slot.depth, 'smallLength');
const width = ({ loop }: Facts): Given =>
  given('w', 'explain.in.slotWidth', loop?.drawn.slot.width, 'smallLength');
const frequency = ({ loop }: Facts): Given =>
  given('f', 'explain.in.frequency', loop?.frequency_Hz, 'frequency');
const temperature = ({ site }: Facts): Given =>
  given('T', 'explain.in.temperature', site.temperature_C, 'temperature');
const length = ({ loop }: Facts): Given => given('l', 'explain.in.wireLength', loop?.wireLength_m, 'length');
const inductance = ({ loop }: Facts): Given =>
  given('L', 'explain.in.magnetic', loop?.inductance_H, 'inductance');
const capacitance = ({ loop }: Facts): Given =>
  given('C', 'explain.in.capacitance', loop?.capacitance_F, 'capacitance');
const insulation = ({ loop }: Facts): Given =>
  given('ε_i', 'explain.in.insulation', loop?.wireUsed?.insulationPermittivity, 'plain');
const fill = ({ loop }: Facts): Given =>
  given('ε_f', 'explain.in.fill', loop?.drawn.slot.relativePermittivity, 'plain');
const pavement = ({ site }: Facts): Given =>
  given('ε_p', 'explain.in.pavement', site.pavement.relativePermittivity, 'plain');
/** Stated conductivity counts at the frequency: both are shown, or neither. */
const conductivity = (facts: Facts): readonly Given[] => {
  const { conductivity_S_m: stated } = facts.site.pavement;
  return stated ? [given('σ', 'explain.in.conductivity', stated * 1e3, 'plain'), frequency(facts)] : [];
};

export const loopEntries = {
  'loop-inductance': {
    formulas: [
      'L = ∑_i ∑_j M_{ij} + L_{int}',
      'M_{ii} = frac{µ_0 l}{2π} ( asinh frac{l}{a} − sqrt{1 + frac{a^2}{l^2}} + frac{a}{l} )'
    ],
    inputs: (facts) => [
      turns(facts),
      round(facts),
      wire(facts),
      insulated(facts),
      depth(facts),
      frequency(facts),
      given('', 'explain.in.steelInductance', facts.loop?.steelInductance_H, 'inductance')
    ],
    result: inductance
  },
  'loop-apparent': {
    formulas: ['L_{app} = frac{L}{1 − (2πf)^2 L C}'],
    inputs: (facts) => [inductance(facts), capacitance(facts), frequency(facts)],
    result: ({ loop }) => given('L_{app}', 'quantity.apparent', loop?.apparentInductance_H, 'inductance')
  },
  'loop-dc': {
    formulas: ['R_{DC} = frac{ρ l}{π a^2}', 'ρ = ρ_{20} ( 1 + α ( T − 20 ) )'],
    inputs: (facts) => [length(facts), wire(facts), temperature(facts)],
    result: ({ loop }) => given('R_{DC}', 'quantity.dc', loop?.resistanceDc_ohm, 'resistance')
  },
  'loop-ac': {
    formulas: [
      'R = R_{DC} + R_{skin} + R_{prox} + R_{pav} + R_{steel} + R_{add}',
      "Z' = frac{ρ}{π a^2} frac{k a}{2} frac{J_0 (k a)}{J_1 (k a)} , k = frac{1 − j}{δ}",
      "P' = ω µ_0 π a^2 | Im frac{J_2 (k a)}{J_0 (k a)} | H^2"
    ],
    inputs: (facts) => {
      const losses = facts.loop?.losses;
      return [
        given('R_{DC}', 'losses.copper', losses?.copperDc_ohm, 'resistance'),
        given('R_{skin}', 'losses.skin', losses?.skin_ohm, 'resistance'),
        given('R_{prox}', 'losses.proximity', losses?.proximity_ohm, 'resistance'),
        given('R_{pav}', 'losses.pavement', losses?.pavement_ohm, 'resistance'),
        given('R_{steel}', 'losses.steel', losses?.steel_ohm, 'resistance'),
        given('R_{add}', 'losses.added', losses?.added_ohm, 'resistance'),
        frequency(facts),
        temperature(facts)
      ];
    },
    result: ({ loop }) => given('R', 'quantity.resistance', loop?.resistanceAc_ohm, 'resistance')
  },
  'loop-q': {
    formulas: ['Q = frac{2πf L}{R}'],
    inputs: (facts) => [
      frequency(facts),
      inductance(facts),
      given('R', 'quantity.resistance', facts.loop?.resistanceAc_ohm, 'resistance')
    ],
    result: ({ loop }) =>
      given(
        'Q',
        'quantity.q',
        loop && (2 * Math.PI * loop.frequency_Hz * loop.inductance_H) / loop.resistanceAc_ohm,
        'plain'
      )
  },
  capacitance: {
    formulas: ['C = C_{turns} + C_{ground}'],
    inputs: ({ loop }) => [
      given('C_{turns}', 'capacitance.turns', loop?.turnCapacitance_F, 'capacitance'),
      given('C_{ground}', 'capacitance.ground', loop?.groundCapacitance_F, 'capacitance')
    ],
    result: capacitance
  },
  'turn-capacitance': {
    formulas: ["C_{turns} = C' l frac{N − 1}{N^3}", "C' = frac{π ε_0 ε_i}{acosh ( frac{D}{2a} )}"],
    inputs: (facts) => [turns(facts), length(facts), wire(facts), insulated(facts), insulation(facts)],
    result: ({ loop }) => given('C_{turns}', 'capacitance.turns', loop?.turnCapacitance_F, 'capacitance')
  },
  'ground-capacitance': {
    formulas: [
      "C_{ground} = frac{1}{3} C' l",
      "frac{2π ε_0}{C'} = frac{1}{ε_i} ln frac{D}{2a} + frac{1}{ε_f} ln frac{w}{D} + frac{1}{ε_p} ln frac{2h}{w}",
      'ε_p → ε_p − frac{jσ}{2πf ε_0}'
    ],
    inputs: (facts) => [
      length(facts),
      wire(facts),
      insulated(facts),
      width(facts),
      depth(facts),
      insulation(facts),
      fill(facts),
      pavement(facts),
      ...conductivity(facts)
    ],
    result: ({ loop }) => given('C_{ground}', 'capacitance.ground', loop?.groundCapacitance_F, 'capacitance')
  },
  'self-resonance': {
    formulas: ['f_{res} = frac{1}{2π sqrt{L C}}'],
    inputs: (facts) => [inductance(facts), capacitance(facts)],
    result: ({ loop }) =>
      given('f_{res}', 'quantity.selfResonance', loop?.selfResonance_Hz, 'frequency', { digits: 3 })
  },
  cover: {
    formulas: ['c = h − n D'],
    inputs: (facts) => [depth(facts), insulated(facts), turns(facts)],
    result: ({ loop }) => given('c', 'quantity.cover', loop?.cover_m, 'smallLength')
  }
} satisfies Partial<Record<ExplainedId, Entry>>;
