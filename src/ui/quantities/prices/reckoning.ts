/** What a take-off reckons with beside the drawing, field by field: what is stated, what is usual, how it is changed. */
import type { MessageKey, PlainMessageKey } from '#i18n/message';
import { BOUNDS } from '#plan/bounds';
import { USUAL_ESTIMATE, type StatedEstimate } from '#plan/catalogue/estimate';
import { updateEstimate, updateRates, updateWaste } from '#plan/edits/index';
import type { Estimate, Site } from '#plan/schema';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { perLengthShown, perLengthStored } from './price-unit';

interface Reckoned {
  readonly label: Extract<MessageKey, PlainMessageKey>;
  readonly kind: QuantityKind;
  /** As the field takes it; null while the usual holds. */
  readonly value: number | null;
  readonly usual: number;
  readonly min: number;
  readonly max: number;
  /** Null: the usual again. */
  readonly change: (site: Site, value: number | null) => Site;
}

export interface Part {
  readonly title: Extract<MessageKey, PlainMessageKey>;
  readonly fields: readonly Reckoned[];
}

const SHARE = { min: 0, max: 1 };

type Plain = 'contingency' | 'bladeDiameter_m' | 'coreDiameter_m' | 'backerEvery_m' | 'backerLength_m' | 'crewSize'; // prettier-ignore
type Rate = keyof StatedEstimate['rates'];
type Wasted = keyof StatedEstimate['waste'];

interface Range {
  readonly min: number;
  readonly max: number;
}

/** With what the estimate states, in the units shown. */
export function reckoningOf({ estimate = {}, displayUnits }: Site): readonly Part[] {
  const plain = (key: Plain, label: Reckoned['label'], kind: QuantityKind, range: Range): Reckoned => ({
    label,
    kind,
    value: estimate[key] ?? null,
    usual: USUAL_ESTIMATE[key],
    ...range,
    change: (site, value) => updateEstimate(site, { [key]: value ?? undefined })
  });
  const waste = (key: Wasted, label: Reckoned['label']): Reckoned => ({
    label,
    kind: 'ratio',
    value: estimate.waste?.[key] ?? null,
    usual: USUAL_ESTIMATE.waste[key],
    ...SHARE,
    change: (site, value) => updateWaste(site, { [key]: value ?? undefined })
  });
  const rate = (key: Rate, label: Reckoned['label']): Reckoned => ({
    label,
    kind: key.endsWith('_m_per_h') ? 'pace' : 'duration',
    value: estimate.rates?.[key] ?? null,
    usual: USUAL_ESTIMATE.rates[key],
    ...(key.endsWith('_m_per_h') ? BOUNDS.pace : BOUNDS.seconds),
    change: (site, value) => updateRates(site, { [key]: value ?? undefined })
  });
  return [
    {
      title: 'estimate.part.waste',
      fields: [
        waste('wire', 'estimate.field.wireWaste'),
        waste('cable', 'estimate.field.cableWaste'),
        waste('sealant', 'estimate.field.sealantWaste'),
        waste('backer', 'estimate.field.backerWaste'),
        waste('conduit', 'estimate.field.conduitWaste'),
        plain('contingency', 'estimate.field.contingency', 'ratio', SHARE)
      ]
    },
    {
      title: 'estimate.part.sawing',
      fields: [
        plain('bladeDiameter_m', 'estimate.field.blade', 'smallLength', BOUNDS.blade),
        plain('coreDiameter_m', 'estimate.field.core', 'smallLength', BOUNDS.core)
      ]
    },
    {
      title: 'estimate.part.wire',
      fields: [
        twists(estimate, displayUnits),
        plain('backerEvery_m', 'estimate.field.backerEvery', 'smallLength', { min: 0.05, max: 100 }),
        plain('backerLength_m', 'estimate.field.backerLength', 'smallLength', { min: 0.005, max: 5 })
      ]
    },
    {
      title: 'estimate.part.crew',
      fields: [
        plain('crewSize', 'estimate.field.crewSize', 'count', { min: 1, max: 50 }),
        rate('setUp_s', 'estimate.field.setUp'),
        rate('preparing_s', 'estimate.field.preparing'),
        rate('sawing_m_per_h', 'estimate.field.sawing'),
        rate('coring_s', 'estimate.field.coring'),
        rate('laying_m_per_h', 'estimate.field.laying'),
        rate('sealing_m_per_h', 'estimate.field.sealing'),
        rate('pulling_m_per_h', 'estimate.field.pulling'),
        rate('splice_s', 'estimate.field.splice'),
        rate('test_s', 'estimate.field.test')
      ]
    }
  ];
}

/** Counted on a metre or on a foot. */
const twists = ({ twistsPerMetre }: Estimate, system: UnitSystem): Reckoned => ({
  label: system === 'metric' ? 'estimate.field.twistsMetre' : 'estimate.field.twistsFoot',
  kind: 'plain',
  value: twistsPerMetre === undefined ? null : perLengthShown(twistsPerMetre, system),
  usual: perLengthShown(USUAL_ESTIMATE.twistsPerMetre, system),
  min: 0,
  max: perLengthShown(100, system),
  change: (site, value) =>
    updateEstimate(site, {
      twistsPerMetre: value === null ? undefined : perLengthStored(value, system)
    })
});

/** All fields of a part as they usually are. */
export const backToUsual = (site: Site, { fields }: Part): Site =>
  fields.reduce((now, { change }) => change(now, null), site);
