/** A remedy carried out on the whole drawing. */
import { freeNumber, setReversed, updateChannel, updateConduit, updateUnit } from '#plan/edits/index';
import type { Circuit, Site, Unit } from '#plan/schema';
import type { Beat, Remedy } from '../../results';
import { movedApart } from './distance';

/**
 * The drawing with the remedy; the same drawing where it cannot take it; null where it needs a unit that is not there.
 */
export const withRemedy = (site: Site, { a, b }: Pick<Beat, 'a' | 'b'>, remedy: Remedy): Site | null => {
  const circuitOf = (id: string): Circuit | undefined => site.circuits.find((circuit) => circuit.id === id);
  switch (remedy.kind) {
    case 'setting':
      return updateChannel(site, remedy.circuit, { frequencySetting: remedy.setting, frequency_Hz: null });
    case 'threshold':
      return remedy.circuits.reduce(
        (result, { circuit, tripThreshold }) => updateChannel(result, circuit, { tripThreshold }),
        site
      );
    case 'measuring-time':
      return remedy.units.reduce(
        (result, id) => updateUnit(result, id, { measuringTime_s: remedy.measuringTime_s }),
        site
      );
    case 'winding': {
      const entry = circuitOf(remedy.circuit)
        ?.strings.flat()
        .find(({ loop }) => loop === remedy.loop);
      return entry ? setReversed(site, remedy.circuit, remedy.loop, !entry.reversed) : site;
    }
    case 'conduit':
      return remedy.conduits.reduce((result, id) => {
        const conduit = result.conduits.find((each) => each.id === id);
        const circuits = conduit?.circuits.filter((circuit) => circuit !== b);
        return circuits ? updateConduit(result, id, { circuits }) : result;
      }, site);
    case 'distance': {
      const moving = circuitOf(remedy.circuit);
      const from = circuitOf(remedy.circuit === a ? b : a);
      return moving && from ? movedApart({ circuit: moving }, { circuit: from }, remedy.by_m)(site) : site;
    }
    case 'scanning': {
      const unit = site.units.find(({ id }) => id === remedy.unit);
      return unit ? onUnit(updateUnit(site, unit.id, { scansInTurn: true }), unit, [a, b]) : null;
    }
  }
};

/** The circuits on channels of the unit, each on a free one if it is not there already. */
const onUnit = (site: Site, unit: Unit, circuits: readonly string[]): Site =>
  circuits.reduce((result, id) => {
    const channel = result.circuits.find((circuit) => circuit.id === id)?.channel;
    if (!channel || channel.unit === unit.id) return result;
    const number = freeNumber(result, unit);
    const frequencySetting = Math.min(channel.frequencySetting, unit.settings_F.length);
    return number === null ? result : updateChannel(result, id, { unit: unit.id, number, frequencySetting });
  }, site);
