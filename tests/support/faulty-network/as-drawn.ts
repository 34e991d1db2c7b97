/** From a site document to the circuit as it is built: exactly as drawn, or within the site's tolerances by chance. */
import { cableOf, isBuiltIn } from '#plan/catalogue/cables';
import { tolerancesOf } from '#plan/catalogue/tolerances';
import { wireOf } from '#plan/catalogue/wires';
import type { Circuit, Site } from '#plan/schema';
import type { BuiltCircuit, BuiltLoop, BuiltWire } from './built';
import { cellsOf, grown } from './shapes';

/** By how much what was built differs from the drawing: metres, kelvins, and for the permittivity its own unit. */
export interface Slips {
  /** Each loop was cut by itself. */
  readonly dimensions: (loop: string) => number;
  readonly depth: (loop: string) => number;
  /** One drum of wire, one lead-in, one day, one pavement. */
  readonly pitch: number;
  readonly leadIn: number;
  readonly temperature: number;
  readonly permittivity: number;
}

const NOTHING = (): number => 0;
export const AS_DRAWN: Slips = {
  ...{ dimensions: NOTHING, depth: NOTHING },
  ...{ pitch: 0, leadIn: 0, temperature: 0, permittivity: 0 }
};

/** A tolerance is 1.96 deviations of a normal distribution. */
const DEVIATIONS = 1.96;

/** `temperature`: how well the temperature is known, deviations in kelvins; the site's tolerance where null. */
export const chanceSlips = (site: Site, normal: () => number, temperature: number | null = null): Slips => {
  const stated = tolerancesOf(site);
  const perLoop = (tolerance: number): ((loop: string) => number) => {
    const drawn = new Map(site.loops.map(({ id }) => [id, (tolerance / DEVIATIONS) * normal()]));
    return (loop) => drawn.get(loop)!;
  };
  return {
    dimensions: perLoop(stated.dimensions_m),
    depth: perLoop(stated.depth_m),
    pitch: (stated.wirePitch_m / DEVIATIONS) * normal(),
    leadIn: (stated.leadInLength_m / DEVIATIONS) * normal(),
    temperature: (temperature ?? stated.temperature_C / DEVIATIONS) * normal(),
    permittivity: (stated.relativePermittivity / DEVIATIONS) * normal()
  };
};

/** Wire with insulation of nothing there is none. */
const THINNEST = 1.03;

export const wireNamed = (id: string, site: Site, thicker = 0): BuiltWire => {
  const wire = wireOf(id, site)!;
  return {
    conductor: wire.conductorDiameter,
    insulated: Math.max(THINNEST * wire.conductorDiameter, wire.insulatedDiameter + thicker),
    permittivity: wire.insulationPermittivity
  };
};

/** `leaks`: Ω to ground of each loop's wire and of the lead-in's. */
export const buildCircuit = (
  site: Site,
  circuit: Circuit,
  slips: Slips,
  leaks: (of: string) => number
): BuiltCircuit => {
  const ids = circuit.strings.flat().map(({ loop }) => loop);
  const loops = ids.map((id): BuiltLoop => {
    const loop = site.loops.find((each) => each.id === id)!;
    return {
      id,
      cells: cellsOf(grown(loop.shape, slips.dimensions(id))),
      turns: loop.turns,
      wire: wireNamed(loop.wire, site, slips.pitch),
      depth: Math.max(0.01, loop.slot.depth + slips.depth(id)),
      slotWidth: loop.slot.width,
      fillPermittivity: loop.slot.relativePermittivity,
      tail: loop.tail.length,
      leak: leaks(id)
    };
  });
  const cable = cableOf(circuit.leadIn.cable, site)!;
  if (!isBuiltIn(cable)) throw new Error('only cables of the catalogue are built here');
  const unit = site.units.find(({ id }) => id === circuit.channel!.unit)!;
  return {
    loops,
    strings: circuit.strings.map((string) =>
      string.map(({ loop, reversed }) => ({ loop: ids.indexOf(loop), reversed }))
    ),
    leadIn: {
      cable: {
        conductor: cable.conductorDiameter!,
        spacing: cable.spacing!,
        permittivity: cable.relativePermittivity ?? 2.3,
        capacitance: cable.capacitancePerMetre_F ?? null
      },
      length: Math.max(1, circuit.leadIn.length + slips.leadIn),
      leak: leaks('lead-in')
    },
    splice: {},
    temperature: site.temperature_C + slips.temperature,
    pavementPermittivity: Math.max(1, site.pavement.relativePermittivity + slips.permittivity),
    setting: unit.settings_F[circuit.channel!.frequencySetting - 1]!
  };
};
