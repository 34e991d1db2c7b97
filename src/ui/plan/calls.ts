/** How every circuit answers to one placed vehicle. */
import type { Assessment, ProbeReadout } from '#analysis/results';
import type { Ref } from '#editor/types';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';

export interface CircuitCall {
  readonly circuit: string;
  /** −ΔL/L, a fraction. */
  readonly response: number;
  /** Response over trip threshold; null without a channel. */
  readonly share: number | null;
  readonly isDetected: boolean;
}

/** The vehicle that is selected, else the first one; null without any. */
export function watchedProbe(site: Site, selection: readonly Ref[]): number | null {
  const chosen = selection.find(({ kind }) => kind === 'probe');
  const index = chosen ? Number(chosen.id) : 0;
  return site.probes[index] ? index : null;
}

/** While vehicles are being prepared some have no readout, and the positions in the two lists differ. */
export function probeReadoutOf(site: Site, { probes }: Assessment, index: number): ProbeReadout | undefined {
  if (probes.length === site.probes.length) return probes[index];
  const probe = site.probes[index];
  return probes.find(
    ({ vehicle, at }) => vehicle === probe?.vehicle && at[0] === probe.at[0] && at[1] === probe.at[1]
  );
}

/** In the order of the site's circuits; empty while there is no answer about that vehicle. */
export function callsOf(
  site: Site,
  assessment: Assessment | null,
  probe: number | null
): readonly CircuitCall[] {
  const readout = probe === null || !assessment ? undefined : probeReadoutOf(site, assessment, probe);
  if (!readout) return [];
  return site.circuits.flatMap((circuit): CircuitCall[] => {
    const found = readout.circuits.find(({ id }) => id === circuit.id);
    if (!found) return [];
    const threshold = circuit.channel?.tripThreshold;
    const response = -found.deltaLOverL;
    const share = threshold === undefined ? null : response / threshold;
    return [{ circuit: circuit.id, response, share, isDetected: found.detected }];
  });
}

/** Every loop's answer in thresholds of its circuit, the largest over all placed vehicles. */
export function loopCalls(
  site: Site,
  assessment: Assessment | null
): ReadonlyMap<string, { readonly ratio: number }> {
  const shares = new Map<string, { readonly ratio: number }>();
  for (const index of site.probes.keys()) {
    for (const { circuit: id, share } of callsOf(site, assessment, index)) {
      const circuit = site.circuits.find((each) => each.id === id);
      for (const loop of circuit && share !== null ? loopsIn(circuit) : []) {
        shares.set(loop, { ratio: Math.max(shares.get(loop)?.ratio ?? 0, share ?? 0) });
      }
    }
  }
  return shares;
}
