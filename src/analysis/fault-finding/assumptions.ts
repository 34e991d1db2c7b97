/** What the reckoning takes for granted about this circuit and these readings. */
import { limitsOfSite } from '#plan/catalogue/acceptance';
import { instrumentFor, USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { Quantity, Reading, Site } from '#plan/schema';
import { conditionsOf } from './conditions';
import type { MeasuredFigure, Told } from './results';

export type Baseline = 'none' | 'used' | 'refused';

const AT_A_FREQUENCY: ReadonlySet<Quantity> = new Set(['inductance_H', 'q']);

interface Given {
  readonly site: Site;
  readonly figures: readonly MeasuredFigure[];
  readonly isCommissioning: boolean;
  readonly baseline: Baseline;
  /** Figures that the model could not be asked. */
  readonly leftOut: number;
  /** How many repeats of one figure count, where there are more. */
  readonly repeats: number | null;
}

const tolerances = (site: Site): Told => {
  const { dimensions_m, depth_m, leadInLength_m, temperature_C } = tolerancesOf(site);
  return {
    key: 'assumed.tolerances',
    values: {
      dimensions: { value: dimensions_m, kind: 'smallLength' },
      depth: { value: depth_m, kind: 'smallLength' },
      leadIn: { value: leadInLength_m, kind: 'length' },
      temperature: { value: temperature_C, kind: 'plain' }
    }
  };
};

/** At which a limit of this site holds while the tester had less; null where none did. */
function voltageMissed(site: Site, figures: readonly MeasuredFigure[]): number | null {
  const missed = figures.flatMap(({ reading, quantity, testPoint }) => {
    const had = site.readings[reading]?.insulationVoltage_V ?? Infinity;
    return limitsOfSite(site).flatMap((limit) =>
      limit.quantity === quantity && limit.testPoints.includes(testPoint) && had < (limit.voltage_V ?? 0)
        ? [limit.voltage_V ?? 0]
        : []
    );
  });
  return missed.length > 0 ? Math.max(...missed) : null;
}

export const assumptionsOf = ({
  site,
  figures,
  isCommissioning,
  baseline,
  leftOut,
  repeats
}: Given): readonly Told[] => {
  const readingOf = ({ reading }: MeasuredFigure): Reading => site.readings[reading]!;
  const hasNoFrequency = figures.some(
    (each) =>
      each.testPoint !== 'unit' &&
      AT_A_FREQUENCY.has(each.quantity) &&
      conditionsOf(site, readingOf(each)).meterFrequency_Hz === undefined
  );
  const hasNoTemperature = figures.some((each) => readingOf(each).temperature_C === undefined);
  const voltage = voltageMissed(site, figures);
  const plain = (key: string): Told => ({ key, values: {} });
  const told: readonly (Told | false)[] = [
    tolerances(site),
    figures.some((each) => !instrumentFor(site, readingOf(each), each.quantity)) && plain('assumed.meters'),
    hasNoFrequency && {
      key: 'assumed.frequency',
      values: { frequency: { value: USUAL_METER_FREQUENCY, kind: 'frequency' } }
    },
    hasNoTemperature && {
      key: 'assumed.temperature',
      values: { temperature: { value: site.temperature_C, kind: 'temperature' } }
    },
    voltage !== null && { key: 'assumed.voltage', values: { voltage: { value: voltage, kind: 'plain' } } },
    plain(isCommissioning ? 'assumed.prior.commissioning' : 'assumed.prior.later'),
    baseline === 'used' && plain('assumed.baseline'),
    baseline === 'refused' && plain('assumed.baseline-refused'),
    plain('assumed.one'),
    repeats !== null && { key: 'assumed.repeats', values: { count: { value: repeats, kind: 'count' } } },
    leftOut > 0 && { key: 'assumed.left-out', values: { count: { value: leftOut, kind: 'count' } } }
  ];
  return told.flatMap((each) => (each === false ? [] : [each]));
};
