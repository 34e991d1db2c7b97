/** Faults, how likely they are and what they rest on, as people read them. */
import type { Estimate, Evidence, Fault, RankedCause } from '#analysis/fault-finding/results';
import { t } from '#i18n/message';
import { withinSentence } from '#i18n/locale';
import { wireOf } from '#plan/catalogue/wires';
import type { Quantity, Site } from '#plan/schema';
import { fixed } from '#units/digits';
import { format, joined } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { nameOf } from '../../names';
import { figureText } from '../parts/figures';

const FOOT = 0.3048;
const THOUSAND = 1_000;
const EDGE = 0.01;
/** Between these a share is told to the nearest five hundredths: more would be pretended. */
const MIDDLE = [0.1, 0.9] as const;
const STEP = 0.05;

/** Percent without decimals, in the language's own way. */
const percent = (share: number): string =>
  format(share, 'ratio', 'metric', { digits: share >= 0.1 ? 2 : 1 }).text;

/** "about 70 %", "under 1 %", "over 99 %": never more than is known. */
export function probabilityText(probability: number): string {
  if (probability < EDGE) return t('causes.view.probability.under', { share: percent(EDGE) });
  if (probability > 1 - EDGE) return t('causes.view.probability.over', { share: percent(1 - EDGE) });
  const [from, to] = MIDDLE;
  const step = probability >= from && probability <= to ? STEP : EDGE;
  return t('causes.view.probability.about', { share: percent(Math.round(probability / step) * step) });
}

type Measured = Exclude<Estimate['name'], 'turns' | 'shortedTurns'>;

const KINDS: Readonly<Record<Measured, QuantityKind>> = {
  distance_m: 'length',
  resistance_ohm: 'resistance',
  leakage_ohm: 'insulation',
  depth_m: 'smallLength',
  extraLength_m: 'length',
  setting: 'count',
  frequency_Hz: 'frequency'
};

/** Wider intervals than this, metres, leave whole metres or feet only. */
const COARSE = 2;

/** "31 m", "0.5 m": as fine as the interval leaves it. */
export function lengthAbout(value: number, width: number, system: UnitSystem): string {
  const unit = system === 'metric' ? 'm' : 'ft';
  const shown = system === 'metric' ? value : value / FOOT;
  return joined(fixed(Math.max(0, shown), width >= COARSE ? 0 : 1), unit);
}

/** As many digits as the interval leaves. */
const digitsOf = ({ value, low, high }: Estimate): number => {
  const width = high - low;
  if (!(width > 0) || !(Math.abs(value) > 0)) return 2;
  return Math.min(4, Math.max(1, Math.ceil(Math.log10(Math.abs(value) / width)) + 1));
};

function writer(estimate: Estimate, kind: QuantityKind, system: UnitSystem): (value: number) => string {
  if (kind === 'length') return (value) => lengthAbout(value, estimate.high - estimate.low, system);
  if (kind === 'count') return (value) => format(value, 'count', system).text;
  if (kind === 'smallLength')
    return (value) =>
      format(value, kind, system, { digits: 2, unit: system === 'metric' ? 'cm' : 'in' }).text;
  const digits = digitsOf(estimate);
  return (value) =>
    format(
      value,
      kind,
      system,
      kind === 'resistance' && Math.abs(value) < THOUSAND ? { digits, unit: 'Ω' } : { digits }
    ).text;
}

/** Of a span the unit is said once, at its end. */
function withoutUnitOf(high: string, low: string): string {
  const unit = /\s\S+$/u.exec(high)?.[0];
  return unit !== undefined && low.endsWith(unit) ? low.slice(0, -unit.length) : low;
}

/** The resistance of water lies across the conductors, that of any other fault in the way of the current. */
function estimateText(estimate: Estimate, system: UnitSystem, of?: Fault['kind']): string {
  const { name } = estimate;
  if (name === 'turns' || name === 'shortedTurns') {
    const write = (value: number) => format(value, 'count', system).text;
    const [value, low, high] = [write(estimate.value), write(estimate.low), write(estimate.high)];
    const count = estimate.value;
    return low === high
      ? t(`causes.view.estimate.${name}.sure`, { count, value })
      : t(`causes.view.estimate.${name}`, { count, value, low, high });
  }
  const kind = KINDS[name];
  const write = writer(estimate, kind, system);
  const [value, high] = [write(estimate.value), write(estimate.high)];
  const low = write(estimate.low);
  const words = name === 'resistance_ohm' && of === 'wet splice' ? 'bridged_ohm' : name;
  return low === high
    ? t(`causes.view.estimate.${words}.sure`, { value })
    : t(`causes.view.estimate.${words}`, { value, low: withoutUnitOf(high, low), high });
}

type Named = Pick<Site, 'loops' | 'circuits' | 'wires'>;

/** Of a loop, a circuit or a wire. */
export function subjectText(site: Named, id: string): string {
  const thing =
    site.loops.find((each) => each.id === id) ??
    site.circuits.find((each) => each.id === id) ??
    wireOf(id, site);
  return thing ? nameOf({ id, name: thing.name }) : id;
}

function faultName(site: Named, { kind, subject }: Fault): string {
  if (kind === 'nothing wrong') return t('causes.view.nothingWrong');
  if (kind === 'something else') return t('causes.view.somethingElse');
  const plain = t(`causes.kind.${kind}`);
  return subject === null
    ? plain
    : t('causes.view.about', { fault: plain, subject: subjectText(site, subject) });
}

/** One fault, or two at once. */
export const causeName = (site: Named, { faults }: RankedCause): string =>
  faults
    .map((fault) => faultName(site, fault))
    .reduce((a, b) => t('causes.view.together', { a, b: withinSentence(b.charAt(0)) + b.slice(1) }));

/** What the readings leave of its unknowns, one line each. */
export const causeEstimates = ({ faults }: RankedCause, system: UnitSystem): readonly string[] =>
  faults.flatMap(({ kind, estimates }) => estimates.map((each) => estimateText(each, system, kind)));

/** What a reading would be under a cause. */
export function predictedText(
  predicted: RankedCause['predicted'][number],
  quantity: Quantity,
  system: UnitSystem
): string {
  if (predicted === null) return '–';
  if (predicted === 'sound') return t('causes.view.sound');
  return figureText(predicted === 'over range' ? null : predicted, quantity, system);
}

/** e-fold: 20 times likelier, and nearly 3 times. */
const STRONG = 3;
const CLEAR = 1;
/** Less than this says nothing. */
const LEAST = 0.1;

export function strengthText(weight: number): string {
  const size = Math.abs(weight);
  if (size >= STRONG) return t('causes.view.strength.strong');
  return size >= CLEAR ? t('causes.view.strength.clear') : t('causes.view.strength.slight');
}

/** For and against, the strongest first. What follows from the cause itself weighs nothing and is told with what speaks for it. */
export function sides(evidence: readonly Evidence[]): {
  readonly pro: readonly Evidence[];
  readonly contra: readonly Evidence[];
} {
  const strongest = [...evidence].sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
  return {
    pro: strongest.filter(({ weight, figure }) => weight >= LEAST || (figure === null && weight >= 0)),
    contra: strongest.filter(({ weight }) => weight <= -LEAST)
  };
}
