/** The sample that shows calls which do not say what happened: what its notes state comes out of the computation. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { callsInSteps } from '#analysis/calls/simulate';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';

const reading = readSite(readFileSync('samples/calls-that-miscount.kerfline.json', 'utf8'));
if (!reading.ok) throw new Error('the sample cannot be read');
const means = createMeans();
const callsOf = (site: Site) => finish(callsInSteps(site, means))!;

describe('the sample of miscounts', { timeout: PATIENCE }, () => {
  const { site } = reading;
  const picture = callsOf(site);
  const channel = (id: string) => picture.channels.find(({ summary }) => summary.circuit === id)!;
  const nameOf = (vehicle: number): string => picture.vehicles[vehicle]!.vehicle;

  it('counts articulated lorries twice over the short loop, and nothing else', () => {
    const { mistakes } = channel('C1');
    expect(mistakes.length).toBeGreaterThan(0);
    for (const { kind, cause, vehicles } of mistakes) {
      expect([kind, cause]).toEqual(['split', 'lost-in-between']);
      expect(vehicles.map(nameOf)).toEqual(['lorry-articulated']);
    }
  });

  it('misses who leaves before the delay has run out, and no more so without it', () => {
    const { summary, mistakes } = channel('C2');
    expect(summary.missed).toBeGreaterThan(10);
    expect(new Set(mistakes.map(({ cause }) => cause))).toEqual(new Set(['left-before-delay']));
    const undelayed = callsOf({
      ...site,
      circuits: site.circuits.map((circuit) =>
        circuit.channel
          ? { ...circuit, channel: { ...circuit.channel, output: { ...circuit.channel.output, delay_s: 0 } } }
          : circuit
      )
    });
    expect(undelayed.channels.find(({ summary: each }) => each.circuit === 'C2')!.summary.missed).toBe(0);
  });

  it('calls with nobody there where the threshold lets the next lane in', () => {
    const { mistakes } = channel('C4');
    const wrong = mistakes.filter(({ kind }) => kind === 'false');
    expect(wrong.length).toBeGreaterThan(0);
    expect(wrong.every(({ cause }) => cause === 'other-lane')).toBe(true);
  });

  it('counts right where nothing is wrong', () => {
    expect(channel('C3').mistakes).toEqual([]);
  });
});
