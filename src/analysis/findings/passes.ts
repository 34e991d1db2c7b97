/** What vehicles do that keep to the edge of their lane, or are lost and found again over one circuit. */
import { t } from '#i18n/message';
import { figures } from '#units/digits';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { loopsIn } from '#plan/wiring';
import type { PassReadout } from '../passing/results';
import { called, calledVehicle, type FindingContext, type FindingRule } from './finding';

const laneOf = ({ lane }: PassReadout, { site }: FindingContext): string =>
  called(site.lanes.find(({ id }) => id === lane) ?? { id: lane ?? '', name: '' });

const byCircuit = (context: FindingContext, passes: readonly PassReadout[]) =>
  context.circuits.flatMap(({ circuit }) => {
    const { channel } = circuit;
    return channel ? [{ circuit, channel, own: passes.filter((pass) => pass.circuit === circuit.id) }] : [];
  });

/** The strongest first; one a vehicle. */
const oneEach = (passes: readonly PassReadout[], worse: (a: PassReadout, b: PassReadout) => number) => {
  const sorted = [...passes].sort(worse);
  return sorted.filter(({ vehicle }, k) => sorted.findIndex((other) => other.vehicle === vehicle) === k);
};

/** A vehicle as wide as the lane is looked at in the middle only by `responses`; at the edge it may be missed. */
export const missedAtEdge: FindingRule = (context) =>
  byCircuit(context, context.result.passes ?? []).flatMap(({ circuit, channel, own }) => {
    const reached = (vehicle: string): boolean =>
      own.some((pass) => pass.vehicle === vehicle && pass.offset_m === 0 && pass.detections > 0);
    const missed = own.filter(
      (pass) =>
        pass.wanted &&
        pass.detections === 0 &&
        reached(pass.vehicle) &&
        vehicleOf(pass.vehicle, context.site)?.paths === 'lane'
    );
    return oneEach(missed, (a, b) => a.response - b.response).map((pass) => ({
      severity: 'caution',
      code: 'missed-at-edge',
      subject: circuit.id,
      selects: loopsIn(circuit),
      message: t('finding.missedAtEdge', {
        circuit: called(circuit),
        vehicle: calledVehicle(pass.vehicle, context.site),
        offset: context.say(Math.abs(pass.offset_m), 'length'),
        response: context.say(pass.response, 'ratio'),
        threshold: context.say(channel.tripThreshold, 'ratio')
      }),
      advice: t('finding.missedAtEdge.advice')
    }));
  });

/** More than one detection of one vehicle: a count of two, and a presence call that drops out. */
export const countedTwice: FindingRule = (context) =>
  byCircuit(context, context.result.passes ?? []).flatMap(({ circuit, channel, own }) => {
    const split = own.filter(({ isServed, detections }) => isServed && detections > 1);
    return oneEach(split, (a, b) => Number(b.wanted) - Number(a.wanted) || b.detections - a.detections).map(
      (pass) => {
        const gap = pass.gaps.reduce((longest, each) => (each.length_m > longest.length_m ? each : longest));
        const release = channel.tripThreshold * channel.releaseRatio;
        const several = loopsIn(circuit).length > 1;
        return {
          severity: pass.wanted ? 'problem' : 'caution',
          code: 'counted-twice',
          subject: circuit.id,
          selects: loopsIn(circuit),
          message: t('finding.countedTwice', {
            circuit: called(circuit),
            vehicle: calledVehicle(pass.vehicle, context.site),
            detections: pass.detections,
            gap: context.say(gap.length_m, 'length'),
            response: context.say(gap.response, 'ratio'),
            release: context.say(release, 'ratio')
          }),
          advice: t(several ? 'finding.countedTwice.several' : 'finding.countedTwice.one')
        };
      }
    );
  });

/** Traffic of the next lane that makes a call only when it keeps to the near edge of its lane. */
export const nextLaneAtEdge: FindingRule = (context) =>
  byCircuit(context, context.result.passes ?? []).flatMap(({ circuit, channel, own }) => {
    const beside = own.filter(({ isServed }) => !isServed);
    const inMiddle = new Set(
      beside.filter(({ offset_m, detections }) => offset_m === 0 && detections > 0).map(({ lane }) => lane)
    );
    const calls = beside.filter(({ detections, lane }) => detections > 0 && !inMiddle.has(lane));
    const lanes = [...new Set(calls.map(({ lane }) => lane))];
    return lanes.map((lane) => {
      const pass = calls
        .filter((each) => each.lane === lane)
        .reduce((worst, each) => (each.response > worst.response ? each : worst));
      return {
        severity: 'caution',
        code: 'next-lane-edge',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.nextLaneEdge', {
          vehicle: calledVehicle(pass.vehicle, context.site),
          lane: laneOf(pass, context),
          circuit: called(circuit),
          change: context.say(-pass.response, 'ratio'),
          times: figures(pass.response / channel.tripThreshold, 2),
          threshold: context.say(channel.tripThreshold, 'ratio')
        }),
        advice: t('finding.nextLane.calls')
      };
    });
  });
