/** Settings of many channels at once. */
import type { Site } from '../schema';
import { mapped, patched, withList } from './list';

export interface PlannedSetting {
  readonly circuit: string;
  /** The unit whose setting is meant. */
  readonly unit: string;
  /** Counted from 1. */
  readonly setting: number;
}

/**
 * Leaves out what no longer fits the drawing: a circuit that is gone, on another unit or on none, pinned or with a given
 * frequency meanwhile, and a setting that the unit does not have.
 */
export function applyPlan(site: Site, plan: readonly PlannedSetting[]): Site {
  const wanted = new Map(plan.map((each) => [each.circuit, each]));
  const sizes = new Map(site.units.map(({ id, settings_F }) => [id, settings_F.length]));
  const circuits = mapped(site.circuits, (circuit) => {
    const { channel } = circuit;
    const planned = wanted.get(circuit.id);
    if (!channel || !planned || channel.unit !== planned.unit) return circuit;
    if (channel.pinned || channel.frequency_Hz !== null) return circuit;
    const { setting } = planned;
    if (!Number.isInteger(setting) || setting < 1 || setting > (sizes.get(channel.unit) ?? 0)) return circuit;
    return patched(circuit, { channel: patched(channel, { frequencySetting: setting }) });
  });
  return withList(site, 'circuits', circuits);
}
