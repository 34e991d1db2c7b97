import { describe, expect, it } from 'vitest';
import { applyPlan } from '#plan/edits/index';
import type { Channel, Site } from '#plan/schema';
import { bigSite } from '../../support/big-site';

const site = bigSite(4);
const settingsOf = ({ circuits }: Site) => circuits.map(({ channel }) => channel?.frequencySetting);
const withChannel = (id: string, patch: Partial<Channel>): Site => ({
  ...site,
  circuits: site.circuits.map((circuit) =>
    circuit.id === id ? { ...circuit, channel: { ...circuit.channel!, ...patch } } : circuit
  )
});

describe('applying a frequency plan', () => {
  it('gives each named circuit its setting and shares everything else', () => {
    const next = applyPlan(site, [
      { circuit: 'C1', unit: 'U1', setting: 4 },
      { circuit: 'C3', unit: 'U1', setting: 1 }
    ]);
    expect(settingsOf(site)).toEqual([1, 2, 3, 4]);
    expect(settingsOf(next)).toEqual([4, 2, 1, 4]);
    expect(next.circuits[1]).toBe(site.circuits[1]);
    expect(next.loops).toBe(site.loops);
    expect(next.circuits[0]).toEqual({
      ...site.circuits[0],
      channel: { ...site.circuits[0]!.channel, frequencySetting: 4 }
    });
  });

  it('is the same site when every setting is as it was', () => {
    expect(applyPlan(site, [{ circuit: 'C2', unit: 'U1', setting: 2 }])).toBe(site);
    expect(applyPlan(site, [])).toBe(site);
  });

  it('leaves out what no longer fits the drawing', () => {
    const plan = [{ circuit: 'C1', unit: 'U1', setting: 3 }];
    expect(applyPlan(site, [{ circuit: 'gone', unit: 'U1', setting: 3 }])).toBe(site);
    expect(applyPlan(site, [{ circuit: 'C1', unit: 'another', setting: 3 }])).toBe(site);
    for (const setting of [0, 5, 1.5])
      expect(applyPlan(site, [{ circuit: 'C1', unit: 'U1', setting }])).toBe(site);
    for (const patch of [{ pinned: true }, { frequency_Hz: 50_000 }]) {
      const kept = withChannel('C1', patch);
      expect(applyPlan(kept, plan)).toBe(kept);
    }
    const unconnected = {
      ...site,
      circuits: site.circuits.map((circuit) => ({ ...circuit, channel: null }))
    };
    expect(applyPlan(unconnected, plan)).toBe(unconnected);
  });
});
