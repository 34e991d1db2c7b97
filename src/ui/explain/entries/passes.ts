/** Vehicles that drive along a lane, and what an output makes of them in time. */
import { timingsOf } from '#plan/catalogue/timings';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { ExplainedId } from '../topic';
import { given, type Entry, type Facts, type Given } from '../facts';

const channelOf = ({ circuit }: Facts) => circuit?.drawn.channel ?? undefined;

const threshold = (facts: Facts): Given =>
  given('t', 'explain.in.threshold', channelOf(facts)?.tripThreshold, 'ratio');

const release = (facts: Facts): Given => {
  const channel = channelOf(facts);
  return given('u', 'explain.in.release', channel && channel.tripThreshold * channel.releaseRatio, 'ratio');
};

const passOf = ({ assessment, topic }: Facts) =>
  assessment?.passes?.find(
    ({ circuit, vehicle, lane, offset_m }) =>
      circuit === topic.circuit &&
      vehicle === topic.vehicle &&
      (lane ?? undefined) === topic.lane &&
      offset_m === topic.offset
  );

const offset = ({ topic }: Facts): Given => given('', 'explain.in.offset', topic.offset, 'length');
const response = (facts: Facts): Given =>
  given('x', 'explain.in.drop', passOf(facts)?.response, 'ratio', { digits: 3 });

const lowestPlate = ({ site, topic }: Facts): Given => {
  const heights = vehicleOf(topic.vehicle ?? '', site)?.parts.flatMap((part) =>
    part.kind === 'plate' ? [part.height] : []
  );
  const lowest = heights && heights.length > 0 ? Math.min(...heights) : undefined;
  return given('h_v', 'explain.in.lowestPlate', lowest, 'smallLength');
};

const heightOf = ({ assessment, topic }: Facts) =>
  assessment?.detectionHeights?.find(({ circuit, loop }) => circuit === topic.circuit && loop === topic.loop);

export const passEntries = {
  'path-response': {
    formulas: ['x = − frac{ΔL}{L}', 'm = frac{x}{t}'],
    inputs: (facts) => [
      given('L', 'quantity.terminalInductance', facts.circuit?.inductance_H, 'inductance'),
      lowestPlate(facts),
      offset(facts),
      threshold(facts),
      given('m', 'explain.in.margin', passOf(facts)?.margin, 'plain')
    ],
    result: response
  },
  'detection-zone': {
    formulas: ['x (s_1) = t', 'x (s_2) = u', 'l = s_2 − s_1'],
    inputs: (facts) => [threshold(facts), release(facts), response(facts)],
    result: (facts) => given('l', 'explain.in.zone', passOf(facts)?.zone?.length_m, 'length')
  },
  'detection-height': {
    formulas: ['x (h) = t'],
    inputs: (facts) => [
      threshold(facts),
      given('', 'explain.in.ruleOfThumb', heightOf(facts)?.ruleOfThumb_m, 'length')
    ],
    result: (facts) => given('h', 'explain.in.detectionHeight', heightOf(facts)?.height_m, 'length')
  },
  calls: {
    formulas: ['x − R ≥ t', 'x − R < u', 'frac{dR}{dt} = frac{x − R}{τ}'],
    inputs: (facts) => {
      const channel = channelOf(facts);
      const timings = channel && timingsOf(channel.output);
      return [
        threshold(facts),
        release(facts),
        given('', 'explain.in.delay', timings?.delay_s, 'time'),
        given('', 'explain.in.extension', timings?.extension_s, 'time'),
        given('τ', 'explain.in.adaptation', timings?.adaptation_s, 'time')
      ];
    },
    result: ({ assessment, topic }) => {
      const calls = assessment?.calls?.find(({ circuit }) => circuit === topic.circuit)?.calls;
      // a count: no decimals, and none of its digits lost
      return given('', 'explain.in.calls', calls, 'plain', { digits: String(calls ?? 0).length });
    }
  }
} satisfies Partial<Record<ExplainedId, Entry>>;
