/** The same for each loop by itself, at its circuit's frequency: what is read at the pull box before anything is spliced. */
import { resonance } from '#physics/circuit/slot-capacitance';
import type { Alone } from '../electrical/alone';
import { dcResistanceOf } from '../electrical/loop-model';
import type { LoopRanges, PlausibleRange } from '../results';
import { rangeOf } from './range';
import type { Shifts } from './shifts';

type Figure = (alone: Alone, loop: number) => number;

const inductance: Figure = ({ solved }, k) => solved.loops[k]!.inductance + solved.steelOf(k).re;

const resistance: Figure = ({ solved }, k) =>
  solved.loops[k]!.resistance - 2 * Math.PI * solved.frequency * solved.steelOf(k).im;

const directCurrent: Figure = ({ solved }, k) => {
  const { model } = solved.input.loops[k]!;
  return dcResistanceOf(model, solved.input.conditions.temperature);
};

const selfResonance: Figure = (alone, k) => {
  const { turns, ground } = alone.solved.input.loops[k]!.leakage(alone.solved.frequency);
  return resonance(inductance(alone, k), turns + ground.capacitance);
};

/** Of the circuit's loops, by their ids in the drawing. */
export const rangesOfLoops = ({ nominal, pairs }: Shifts, ids: readonly string[]): LoopRanges[] =>
  ids.map((id, k) => {
    const range = (figure: Figure): PlausibleRange =>
      rangeOf(
        figure(nominal, k),
        pairs.map(({ input, below, above }) => ({
          input,
          below: { share: below.share, value: figure(below.alone, k) },
          above: { share: above.share, value: figure(above.alone, k) }
        }))
      );
    return {
      id,
      inductance_H: range(inductance),
      resistance_ohm: range(resistance),
      resistanceDc_ohm: range(directCurrent),
      selfResonance_Hz: range(selfResonance)
    };
  });
