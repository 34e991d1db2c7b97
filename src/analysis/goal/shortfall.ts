/**
 * How far a finding is from going away: 0 where it is gone, falling on the way there, by the number that the finding itself
 * judges. Only said to be nearer or farther; a search never trusts it to be monotone.
 */
import { wireOf } from '#plan/catalogue/wires';
import type { Circuit, Site } from '#plan/schema';
import { USUAL_BAND } from '../band';
import { WATCH_FROM } from '../beating/rate';
import { LEAST_COVER } from '../findings/cover';
import { LEAST_Q } from '../findings/low-quality';
import { LEAST_INDUCTANCE, MOST_INDUCTANCE } from '../findings/unusual-turns';
import type { CircuitReadout, LoopReadout } from '../results';
import type { Judged } from './judge';
import type { FindingRef } from './results';

type Measure = (about: { readonly judged: Judged; readonly site: Site; readonly subject: string }) => number;

const channelOf = (circuit: string, site: Site): Circuit['channel'] =>
  site.circuits.find(({ id }) => id === circuit)?.channel ?? null;

const thresholdFor = (circuit: string, site: Site): number => channelOf(circuit, site)?.tripThreshold ?? NaN;

const releaseFor = (circuit: string, site: Site): number =>
  thresholdFor(circuit, site) * (channelOf(circuit, site)?.releaseRatio ?? NaN);

/** The share of a level that a response lacks: finite for no response too, and never better than reaching it for less than none. */
const lacking = (response: number, level: number): number => 1 - response / level;

const ofCircuit =
  (measure: (readout: CircuitReadout, threshold: number, site: Site) => number): Measure =>
  ({ judged, site, subject }) => {
    const readout = judged.result.circuits.find(({ id }) => id === subject);
    return readout ? measure(readout, thresholdFor(subject, site), site) : NaN;
  };

const ofLoop =
  (measure: (readout: LoopReadout, site: Site) => number): Measure =>
  ({ judged, site, subject }) => {
    const readout = judged.result.loops.find(({ id }) => id === subject);
    return readout ? measure(readout, site) : NaN;
  };

const outOf = (value: number, [least, most]: readonly [number, number]): number =>
  Math.max(least / value, value / most) - 1;

const worst = (values: readonly number[]): number => (values.length === 0 ? NaN : Math.max(...values));

const MEASURES: Readonly<Record<string, Measure>> = {
  'low-q': ofCircuit(({ q }) => LEAST_Q / q - 1),
  'inductance-range': ofCircuit((readout, _, site) => {
    const unit = site.units.find(({ id }) => id === channelOf(readout.id, site)?.unit);
    return unit ? outOf(readout.inductance_H, unit.inductanceRange_H) : NaN;
  }),
  'frequency-band': ofCircuit(({ frequency_Hz }) => outOf(frequency_Hz, USUAL_BAND)),
  resonance: ofCircuit(({ frequency_Hz, selfResonance_Hz }) => frequency_Hz / selfResonance_Hz),
  undetected: ofCircuit(({ responses }, threshold) =>
    worst(responses.filter(({ wanted }) => wanted).map(({ best }) => lacking(-best, threshold)))
  ),
  'detected-in-part': ofCircuit(({ responses }, threshold) =>
    worst(responses.filter(({ wanted }) => wanted).map((each) => lacking(-each.worst, threshold)))
  ),
  'next-lane': ofCircuit(({ neighbours }, threshold) =>
    worst(neighbours.map(({ deltaLOverL }) => -deltaLOverL / threshold))
  ),
  'steel-near': ofCircuit(({ steel, responses }) => {
    const asked = steel?.responses.filter(({ vehicle }) =>
      responses.some((each) => each.vehicle === vehicle)
    );
    return steel ? Math.max(steel.inductanceShare, ...asked!.map(({ share }) => share)) : NaN;
  }),
  beating: ({ judged, subject }) =>
    (judged.result.beats.find(({ a, b }) => `${a} + ${b}` === subject)?.ratio ?? NaN) / WATCH_FROM,
  'missed-at-edge': ({ judged, site, subject }) =>
    worst(
      (judged.result.passes ?? [])
        .filter(({ circuit, wanted, detections }) => circuit === subject && wanted && detections === 0)
        .map(({ response }) => lacking(response, thresholdFor(subject, site)))
    ),
  'counted-twice': ({ judged, site, subject }) =>
    // the weaker a gap, the farther it is from being bridged
    worst(
      (judged.result.passes ?? [])
        .filter(({ circuit, isServed }) => circuit === subject && isServed)
        .flatMap(({ gaps }) => gaps.map(({ response }) => lacking(response, releaseFor(subject, site))))
    ),
  'next-lane-edge': ({ judged, site, subject }) =>
    worst(
      (judged.result.passes ?? [])
        .filter(({ circuit, isServed }) => circuit === subject && !isServed)
        .map(({ response }) => response / thresholdFor(subject, site))
    ),
  cover: ofLoop(({ cover_m }) => LEAST_COVER - cover_m),
  turns: ofLoop(({ inductance_H }) => outOf(inductance_H, [LEAST_INDUCTANCE, MOST_INDUCTANCE])),
  'slot-width': ({ site, subject }) => {
    const loop = site.loops.find(({ id }) => id === subject);
    const wire = loop && wireOf(loop.wire, site);
    return wire ? wire.insulatedDiameter - loop.slot.width : NaN;
  },
  miscounts: ({ judged, subject }) => {
    const summary = judged.result.calls?.find(({ circuit }) => circuit === subject);
    return summary ? summary.missed + summary.merged + summary.split + summary.false : NaN;
  }
};

/** NaN for a finding that is there or not, with nothing between. */
export const shortfallOf = ({ code, subject }: FindingRef, judged: Judged, site: Site): number =>
  MEASURES[code]?.({ judged, site, subject }) ?? NaN;
