/** From the drawn circuit to what the solver takes. */
import type { Circuit, Loop, Site, Unit } from '#plan/schema';
import type { CircuitInput } from './circuit-model';
import { leadInChains, leadInDcResistance, tailChain } from './lead';
import { capacitanceOf, dcResistanceOf, type LoopModel } from './loop-model';

export interface ModelledLoop {
  readonly loop: Loop;
  readonly model: LoopModel;
}

/** Capacitance of the channel's setting; null where a frequency is given or there is no channel. */
const settingOf = (circuit: Circuit, unit: Unit | undefined): number | null => {
  if (!circuit.channel || circuit.channel.frequency_Hz !== null) return null;
  return unit?.settings_F[circuit.channel.frequencySetting - 1] ?? null;
};

/** Null if one of the circuit's loops cannot be wound. */
export const circuitInput = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>,
  mutual: (a: LoopModel, b: LoopModel) => number
): CircuitInput | null => {
  const branches = circuit.strings.flatMap((string, index) =>
    string.map(({ loop, reversed }) => ({ modelled: loops.get(loop), string: index, reversed }))
  );
  if (branches.some(({ modelled }) => !modelled)) return null;
  const temperature = site.temperature_C;
  const inCircuit = branches.map(({ modelled, string, reversed }) => {
    const { loop, model } = modelled!;
    return {
      id: loop.id,
      model,
      string,
      reversed,
      capacitance: capacitanceOf(model, loop, site.pavement.relativePermittivity),
      tail: (frequency: number) => tailChain(model.wire, loop.tail.length, frequency, temperature)
    };
  });
  return {
    id: circuit.id,
    loops: inCircuit,
    mutual: (i, j) => mutual(inCircuit[i]!.model, inCircuit[j]!.model),
    leadIn: (frequency) => leadInChains(circuit, site, frequency),
    temperature,
    frequency: circuit.channel?.frequency_Hz ?? null,
    setting: settingOf(
      circuit,
      site.units.find(({ id }) => id === circuit.channel?.unit)
    )
  };
};

/** What an ohmmeter reads at the terminals: strings of loops with their tails in parallel, behind the lead-in. */
export const circuitDcResistance = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>
): number => {
  const branch = (id: string): number => {
    const { loop, model } = loops.get(id)!;
    const perMetre = dcResistanceOf(model, site.temperature_C) / model.winding.wireLength;
    return perMetre * (model.winding.wireLength + 2 * loop.tail.length);
  };
  const conductance = circuit.strings
    .map((string) => string.reduce((sum, { loop }) => sum + branch(loop), 0))
    .reduce((sum, resistance) => sum + 1 / resistance, 0);
  return 1 / conductance + leadInDcResistance(circuit, site);
};

/** Everything on which a circuit's solution depends, as one text: the key under which it is kept. */
export const circuitKey = (circuit: Circuit, site: Site, loops: ReadonlyMap<string, ModelledLoop>): string =>
  JSON.stringify([
    circuit.strings.map((string) =>
      string.map(({ loop, reversed }) => {
        const modelled = loops.get(loop);
        return [loop, modelled?.model.key, modelled?.loop.tail.length, reversed];
      })
    ),
    circuit.leadIn,
    site.cables.find(({ id }) => id === circuit.leadIn.cable),
    circuit.channel?.frequency_Hz ?? null,
    settingOf(
      circuit,
      site.units.find(({ id }) => id === circuit.channel?.unit)
    ),
    site.temperature_C,
    site.pavement.relativePermittivity
  ]);
