/** From the drawn circuit to what the solver takes. */
import { cableOf } from '#plan/catalogue/cables';
import type { Circuit, Loop, Site, Unit } from '#plan/schema';
import type { CircuitInput, SteelMatrix } from './circuit-model';
import { leadInChains, leadInDcResistance, tailChain } from './lead';
import { conditionsOf, dcResistanceOf, leakageOf, type LoopModel } from './loop-model';

export interface ModelledLoop {
  readonly loop: Loop;
  readonly model: LoopModel;
}

/** Capacitance of the channel's setting; null where a frequency is given or there is no channel. */
const settingOf = (circuit: Circuit, unit: Unit | undefined): number | null => {
  if (!circuit.channel || circuit.channel.frequency_Hz !== null) return null;
  return unit?.settings_F[circuit.channel.frequencySetting - 1] ?? null;
};

/** What the loops' geometry gives, from whoever keeps it. */
export interface CircuitMeans {
  /** External mutual inductance of two loops as drawn, H. */
  readonly mutual: (a: LoopModel, b: LoopModel) => number;
  /** What steel adds to it at a frequency, H (complex: its losses); null where no steel is near any of the loops. */
  readonly steel: (loops: readonly LoopModel[], site: Site) => SteelMatrix | null;
}

/** Null if one of the circuit's loops cannot be wound. */
export const circuitInput = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>,
  { mutual, steel }: CircuitMeans
): CircuitInput | null => {
  const branches = circuit.strings.flatMap((string, index) =>
    string.map(({ loop, reversed }) => ({ modelled: loops.get(loop), string: index, reversed }))
  );
  if (branches.some(({ modelled }) => !modelled)) return null;
  const conditions = conditionsOf(site);
  const inCircuit = branches.map(({ modelled, string, reversed }) => {
    const { loop, model } = modelled!;
    return {
      id: loop.id,
      model,
      string,
      reversed,
      added: loop.addedResistance_ohm ?? 0,
      leakage: (frequency: number) => leakageOf(model, loop, frequency, conditions),
      tail: (frequency: number) => tailChain(model.wire, loop.tail.length, frequency, conditions.temperature)
    };
  });
  return {
    id: circuit.id,
    loops: inCircuit,
    mutual: (i, j) => mutual(inCircuit[i]!.model, inCircuit[j]!.model),
    steel: steel(
      inCircuit.map(({ model }) => model),
      site
    ),
    leadIn: (frequency) => leadInChains(circuit, site, frequency),
    conditions,
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
    return perMetre * (model.winding.wireLength + 2 * loop.tail.length) + (loop.addedResistance_ohm ?? 0);
  };
  const conductance = circuit.strings
    .map((string) => string.reduce((sum, { loop }) => sum + branch(loop), 0))
    .reduce((sum, resistance) => sum + 1 / resistance, 0);
  return 1 / conductance + leadInDcResistance(circuit, site);
};

/** Everything on which a circuit's solution depends, as one text: the key under which it is kept. */
export const circuitKey = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>,
  steelNear: (model: LoopModel) => string
): string =>
  JSON.stringify([
    circuit.strings.map((string) =>
      string.map(({ loop, reversed }) => {
        const modelled = loops.get(loop);
        const { tail, addedResistance_ohm } = modelled?.loop ?? {};
        const steel = modelled && steelNear(modelled.model);
        return [loop, modelled?.model.key, tail?.length, addedResistance_ohm, reversed, steel];
      })
    ),
    [circuit.leadIn, ...(circuit.leadIn.further ?? [])].map(({ cable, length }) => [
      length,
      cableOf(cable, site)
    ]),
    circuit.channel?.frequency_Hz ?? null,
    settingOf(
      circuit,
      site.units.find(({ id }) => id === circuit.channel?.unit)
    ),
    site.temperature_C,
    site.temperatureRange_C,
    site.pavement
  ]);
