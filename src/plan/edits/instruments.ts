/** The meters that a site's readings are taken with, and what their makers state of them. */
import { COUNTS } from '../bounds';
import type { Instrument, Quantity, Site } from '../schema';
import { freeId, patched, type Patch } from './list';
import { updateFieldCheck } from './readings';

const instrumentsOf = ({ fieldCheck }: Pick<Site, 'fieldCheck'>): readonly Instrument[] =>
  fieldCheck?.instruments ?? [];

/** The id that a new one gets: "M1". */
export const newInstrumentId = (site: Site): string => freeId(instrumentsOf(site), 'M');

/** The same site when there are as many as there may be. */
export function addInstrument(site: Site, instrument: Instrument): Site {
  const instruments = instrumentsOf(site);
  if (instruments.length >= COUNTS.instruments) return site;
  return updateFieldCheck(site, { instruments: [...instruments, instrument] });
}

/** The same site when nothing changes or a value is outside its bounds. */
export function updateInstrument(site: Site, id: string, patch: Patch<Omit<Instrument, 'id'>>): Site {
  const before = instrumentsOf(site);
  const instruments = before.map((each) => (each.id === id ? patched<Instrument>(each, patch) : each));
  return instruments.every((each, at) => each === before[at])
    ? site
    : updateFieldCheck(site, { instruments });
}

/** Takes an accuracy away where nothing is stated; shares of the reading, floors in the quantity's unit. */
export function stateAccuracy(
  site: Site,
  id: string,
  quantity: Quantity,
  stated: { readonly share: number; readonly floor: number } | null
): Site {
  const instrument = instrumentsOf(site).find((each) => each.id === id);
  if (!instrument) return site;
  const others = instrument.accuracies.filter((each) => each.quantity !== quantity);
  const accuracies = stated ? [...others, { quantity, ...stated }] : others;
  return updateInstrument(site, id, { accuracies });
}

/** How many readings were taken with it. */
export const usesOfInstrument = ({ readings }: Pick<Site, 'readings'>, id: string): number =>
  readings.filter(({ instruments }) => instruments?.includes(id)).length;

/** The same site while readings name it: they would lose what they were taken with. */
export function removeInstrument(site: Site, id: string): Site {
  const before = instrumentsOf(site);
  const instruments = before.filter((each) => each.id !== id);
  if (instruments.length === before.length || usesOfInstrument(site, id) > 0) return site;
  return updateFieldCheck(site, { instruments: instruments.length > 0 ? instruments : undefined });
}
