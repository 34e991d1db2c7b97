/** Vehicles whose response may be read. */
import { vehiclesOf } from '#plan/catalogue/vehicles';
import type { Circuit, Site } from '#plan/schema';
import { vehicleName } from '../../names';

/** Those that the circuit must detect first. */
export function vehicleOptions(
  site: Pick<Site, 'vehicles'>,
  { detect }: Pick<Circuit, 'detect'>
): readonly { readonly value: string; readonly label: string }[] {
  const all = vehiclesOf(site).map(({ id }) => id);
  return [...new Set([...detect, ...all])].map((id) => ({ value: id, label: vehicleName(site, id) }));
}
