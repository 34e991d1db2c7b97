/** Which circuit is on a channel, seen from the unit. */
import type { Site } from '../schema';
import { channelOn, quietSetting } from './channels';
import { connectCircuit, updateChannel } from './circuits';
import { mapped, withList } from './list';

/**
 * Puts the circuit on that channel of the unit; null leaves the channel free. A circuit that is there already takes the
 * other's place, or none where the other had none. On a unit without a setting of its number a circuit gets the one that
 * fewest channels of the site use. The same site for a unit, a channel or a circuit that is not there.
 */
export function assignChannel(site: Site, id: string, number: number, circuit: string | null): Site {
  const unit = site.units.find((each) => each.id === id);
  if (!unit || !Number.isInteger(number) || number < 1 || number > unit.channels) return site;
  const there = site.circuits.find(({ channel }) => channel?.unit === id && channel.number === number);
  if (circuit === null) return there ? connectCircuit(site, there.id, false) : site;
  const coming = site.circuits.find((each) => each.id === circuit);
  if (!coming || coming === there) return site;
  if (coming.channel) {
    const { frequencySetting } = coming.channel;
    const fits = frequencySetting <= unit.settings_F.length;
    return updateChannel(site, circuit, {
      ...{ unit: id, number },
      frequencySetting: fits ? frequencySetting : quietSetting(site, unit)
    });
  }
  const freed = there ? connectCircuit(site, there.id, false) : site;
  const channel = channelOn(freed, unit, number);
  return withList(
    freed,
    'circuits',
    mapped(freed.circuits, (each) => (each.id === circuit ? { ...each, channel } : each))
  );
}
