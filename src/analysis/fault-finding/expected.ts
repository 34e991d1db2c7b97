/**
 * What a circuit's meters should say at each test point if it is as designed. Each input is moved to both ends of its
 * tolerance and the network read anew, as for the ranges of a circuit's own figures.
 */
import { USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import { limitsOfSite } from '#plan/catalogue/acceptance';
import type { Site } from '#plan/schema';
import { createMeans, type Means } from '../means';
import { rangeOf, type Bend, type Shifted } from '../tolerance/range';
import type { PlausibleRange } from '../results';
import type { Steps } from '../steps';
import { askableFigures } from './forward/askable';
import type { AskedFigure, Predicted } from './forward/contract';
import type { Core } from './forward/core';
import { keptCoreInSteps } from './forward/prepare';
import { readEnds, type ReadEnd } from './forward/spread';
import { stateWith } from './network/faults';
import type { CircuitExpectation, ExpectedFigure, Limit, MeterConditions } from './results';

const isNumber = (predicted: Predicted): predicted is number => typeof predicted === 'number';

/** If nothing is wrong. */
const readSound = ({ nominal: { meter, design } }: Core, asked: AskedFigure): Predicted =>
  meter.read(stateWith(design, []), asked);

/** At which the figure holds; null for what does not hang on a meter's frequency. */
const frequencyOf = (core: Core, asked: AskedFigure): number | null => {
  const { testPoint, quantity, meterFrequency_Hz } = asked;
  const { solved } = core;
  if (quantity !== 'inductance_H' && quantity !== 'q' && quantity !== 'deltaLOverL') return null;
  if (meterFrequency_Hz !== null) return meterFrequency_Hz;
  if (testPoint !== 'unit') return USUAL_METER_FREQUENCY;
  if (asked.setting === null) return solved.frequency;
  const running = readSound(core, { ...asked, quantity: 'frequency_Hz' });
  return isNumber(running) ? running : solved.frequency;
};

/** A limit on Q was published for one frequency: at another it says nothing. */
const SAME_FREQUENCY = 0.05;

/** Of the site as it is now: what is kept of a circuit is also that of one with other limits. */
const limitsOf = (
  site: Site,
  { circuit }: Core,
  figure: AskedFigure,
  frequency: number | null
): readonly Limit[] => {
  const { testPoint, quantity } = figure;
  const published = limitsOfSite(site).flatMap((limit): Limit[] => {
    const isElsewhere =
      limit.frequency_Hz !== null &&
      frequency !== null &&
      Math.abs(frequency / limit.frequency_Hz - 1) > SAME_FREQUENCY;
    return limit.quantity === quantity && limit.testPoints.includes(testPoint) && !isElsewhere
      ? [{ id: limit.id, least: limit.least, most: limit.most }]
      : [];
  });
  const agreed = site.fieldCheck?.insulationLimit_ohm;
  const own: readonly Limit[] =
    quantity === 'insulation_ohm' && agreed !== undefined ? [{ id: 'own', least: agreed, most: null }] : [];
  const range = site.units.find(({ id }) => id === circuit.channel?.unit)?.inductanceRange_H;
  const ofUnit: readonly Limit[] =
    quantity === 'inductance_H' && testPoint !== 'loop' && testPoint !== 'pull-box' && range
      ? [{ id: 'unit', least: range[0], most: range[1] }]
      : [];
  return [...published, ...own, ...ofUnit];
};

const plausible = (core: Core, value: number, figure: AskedFigure): PlausibleRange => {
  const end = ({ share, value: at }: ReadEnd): Shifted =>
    isNumber(at) ? { share, value: at } : { share: 0, value };
  return rangeOf(
    value,
    core.ends.map((ends): Bend => {
      const { below, above } = readEnds(ends, figure);
      return { input: ends.input, below: end(below), above: end(above) };
    })
  );
};

const expectedFigure = (site: Site, core: Core, asked: AskedFigure): ExpectedFigure => {
  const predicted = readSound(core, asked);
  const frequency = frequencyOf(core, asked);
  const { testPoint, loop, quantity, vehicle } = asked;
  const common = {
    ...{ testPoint, loop, quantity, vehicle },
    frequency_Hz: frequency,
    limits: limitsOf(site, core, asked, frequency)
  };
  if (!isNumber(predicted)) return { ...common, value: null, low: null, high: null, contributions: [] };
  const { low, high, contributions } = plausible(core, predicted, asked);
  return { ...common, value: predicted, low, high, contributions };
};

/** One entry a circuit that can be computed; of all circuits, or of the one named. */
export function* expectedInSteps(
  site: Site,
  circuit?: string,
  conditions: MeterConditions = {},
  means: Means = createMeans()
): Steps<readonly CircuitExpectation[]> {
  const found: CircuitExpectation[] = [];
  for (const { id } of site.circuits) {
    if (circuit !== undefined && id !== circuit) continue;
    const core = yield* keptCoreInSteps(site, id, [], means);
    if (!core) continue;
    const figures: ExpectedFigure[] = [];
    for (const asked of askableFigures(core)) {
      figures.push(expectedFigure(site, core, under(conditions, asked)));
      yield;
    }
    found.push({ circuit: id, figures });
  }
  return found;
}

/** The unit measures at its own frequency, whatever the meter does. */
const under = (
  { meterFrequency_Hz, temperature_C, setting }: MeterConditions,
  asked: AskedFigure
): AskedFigure => ({
  ...asked,
  temperature_C: temperature_C ?? null,
  setting: setting ?? null,
  meterFrequency_Hz: asked.testPoint === 'unit' ? null : (meterFrequency_Hz ?? null)
});
