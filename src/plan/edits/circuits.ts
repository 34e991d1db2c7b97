/** A circuit's fields and its channel. Every change that a document may not hold leaves the site as it is. */
import { cableOf } from '../catalogue/cables';
import { vehicleOf } from '../catalogue/vehicles';
import { circuit as circuitSchema, type Channel, type Circuit, type Site } from '../schema';
import { withFreeChannel } from './channels';
import { mapped, patched, withList, type Patch } from './list';

function isSound(site: Site, circuit: Circuit): boolean {
  const cables = [circuit.leadIn, ...(circuit.leadIn.further ?? [])];
  if (!circuitSchema.safeParse(circuit).success) return false;
  if (!cables.every(({ cable }) => cableOf(cable, site))) return false;
  if (!circuit.detect.every((vehicle) => vehicleOf(vehicle, site))) return false;
  return circuit.channel === null || isSoundChannel(site, circuit.channel);
}

/** The unit exists and has such a channel and such a setting. */
function isSoundChannel(site: Site, { unit: id, number, frequencySetting }: Channel): boolean {
  const unit = site.units.find((each) => each.id === id);
  return unit !== undefined && number <= unit.channels && frequencySetting <= unit.settings_F.length;
}

function change(site: Site, id: string, next: (circuit: Circuit) => Circuit): Site {
  const circuits = mapped(site.circuits, (circuit) => {
    if (circuit.id !== id) return circuit;
    const result = next(circuit);
    return result === circuit || isSound(site, result) ? result : circuit;
  });
  return withList(site, 'circuits', circuits);
}

export const updateCircuit = (
  site: Site,
  id: string,
  patch: Patch<Pick<Circuit, 'name' | 'leadIn' | 'detect'>>
): Site => change(site, id, (circuit) => patched<Circuit>(circuit, patch));

/**
 * Settings of the circuit's channel; a circuit without one stays without. A circuit that is connected where the change
 * leads gives way to the place that becomes free, on the last setting there where it has none of its number.
 */
export function updateChannel(site: Site, id: string, patch: Patch<Channel>): Site {
  const old = site.circuits.find((circuit) => circuit.id === id)?.channel;
  if (!old) return site;
  const channel = patched(old, patch);
  const next = change(site, id, (circuit) => patched<Circuit>(circuit, { channel }));
  const moved = next !== site && (channel.unit !== old.unit || channel.number !== old.number);
  const inTheWay = moved ? site.circuits.find((other) => other.id !== id && isAt(other, channel)) : undefined;
  if (!inTheWay?.channel) return next;
  const settings = site.units.find((unit) => unit.id === old.unit)?.settings_F.length ?? 1;
  const frequencySetting = Math.min(inTheWay.channel.frequencySetting, settings);
  const place = { ...inTheWay.channel, unit: old.unit, number: old.number, frequencySetting };
  const swapped = change(next, inTheWay.id, (circuit) => ({ ...circuit, channel: place }));
  return swapped === next ? site : swapped;
}

const isAt = (circuit: Circuit, { unit, number }: Channel): boolean =>
  circuit.channel?.unit === unit && circuit.channel.number === number;

/** Connects the circuit to the first free channel, or takes it off its channel. */
export function connectCircuit(site: Site, id: string, connected: boolean): Site {
  const circuit = site.circuits.find((each) => each.id === id);
  if (!circuit || (circuit.channel !== null) === connected) return site;
  if (!connected) return change(site, id, (each) => ({ ...each, channel: null }));
  const { site: wired, channel } = withFreeChannel(site);
  return channel === null ? site : change(wired, id, (each) => ({ ...each, channel }));
}

/** Turns the sense of winding of one loop. */
export const setReversed = (site: Site, id: string, loop: string, reversed: boolean): Site =>
  change(site, id, (circuit) => {
    const strings = mapped(circuit.strings, (string) =>
      mapped(string, (entry) => (entry.loop === loop ? patched(entry, { reversed }) : entry))
    );
    return withList(circuit, 'strings', strings);
  });
