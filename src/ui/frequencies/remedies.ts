/** What would clear a pair, in words: the change, and what it leaves. */
import { listed } from '#i18n/locale';
import type { Beat, Remedy } from '#analysis/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import type { QuantityKind } from '#units/kind';
import { circuitName, loopName, nameOf, vehicleName } from '../names';

/** What is less disturbs nobody, and more decimals would only be harder to read. */
const LEAST_RATIO = 0.001;

/** "×0.04": a ripple in trip thresholds. */
export const times = (ratio: number): string => {
  const isTiny = ratio > 0 && ratio < LEAST_RATIO;
  const { text } = format(isTiny ? LEAST_RATIO : ratio, 'plain', 'metric', { digits: isTiny ? 1 : 2 });
  return `${isTiny ? '<' : ''}×${text}`;
};

type Pair = Pick<Beat, 'a' | 'b'>;
type Named = Pick<Site, 'displayUnits' | 'circuits' | 'loops' | 'units' | 'vehicles'>;

const unitNamed = ({ units }: Named, id: string): string => {
  const unit = units.find((each) => each.id === id);
  return unit ? nameOf(unit) : id;
};

function thresholdWords(site: Named, { circuits }: Extract<Remedy, { kind: 'threshold' }>): string {
  const thresholds = circuits.map(({ circuit, tripThreshold }) =>
    t('remedy.threshold', {
      threshold: format(tripThreshold, 'ratio', site.displayUnits, { digits: 2 }).text,
      circuit: circuitName(site, circuit)
    })
  );
  const lost = [...new Set(circuits.flatMap((each) => each.lost))].map((id) => vehicleName(site, id));
  const result = lost.length === 0 ? t('remedy.seesAll') : t('remedy.loses', { vehicles: listed(lost) });
  return `${listed(thresholds)} (${result})`;
}

/** Both are on it already, or one of them moves there. */
function scanningWords(site: Named, { a, b }: Pair, unit: string | null): string {
  if (unit === null) return t('remedy.scanNew');
  const isShared = [a, b].every(
    (id) => site.circuits.find((circuit) => circuit.id === id)?.channel?.unit === unit
  );
  return t(isShared ? 'remedy.scanSame' : 'remedy.scanOther', { unit: unitNamed(site, unit) });
}

function changeWords(site: Named, pair: Pair, remedy: Remedy): string {
  const say = (value: number, kind: QuantityKind, options = {}) =>
    format(value, kind, site.displayUnits, options).text;
  switch (remedy.kind) {
    case 'setting':
      return t('remedy.setting', {
        setting: remedy.setting,
        circuit: circuitName(site, remedy.circuit),
        frequency: say(remedy.frequency_Hz, 'frequency')
      });
    case 'distance':
      return t('remedy.distance', {
        circuit: circuitName(site, remedy.circuit),
        distance: say(remedy.by_m, 'length')
      });
    case 'winding':
      return t('remedy.winding', { loop: loopName(site, remedy.loop) });
    case 'scanning':
      return scanningWords(site, pair, remedy.unit);
    case 'threshold':
      return thresholdWords(site, remedy);
    case 'measuring-time':
      return t('remedy.measure', { time: say(remedy.measuringTime_s, 'time', { digits: 2 }) });
    case 'conduit':
      return t('remedy.conduit');
  }
}

/** The change, the ratio that it leaves, and with whom else it would beat more. */
export function remedyWords(site: Named, pair: Pair, remedy: Remedy): string {
  const { kind, ratio, spoils } = remedy;
  const change = changeWords(site, pair, remedy);
  const left =
    kind === 'scanning' && ratio === 0
      ? t('remedy.never', { change })
      : t('remedy.leaves', { change, ratio: times(ratio) });
  if (spoils.length === 0) return left;
  return t('remedy.spoils', { left, circuits: listed(spoils.map((id) => circuitName(site, id))) });
}
