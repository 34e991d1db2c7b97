/**
 * What a take-off reckons with where the site states nothing. All of it is common practice without a published source
 * unless a line says otherwise; no price is assumed.
 */
import type { Estimate, Site } from '../schema';

export interface StatedEstimate {
  readonly currency: string | null;
  readonly contingency: number;
  readonly wholePacks: boolean;
  readonly overcuts: boolean;
  readonly bladeDiameter_m: number;
  readonly coreHoles: boolean;
  readonly coreDiameter_m: number;
  readonly twistsPerMetre: number;
  readonly backerEvery_m: number;
  readonly backerLength_m: number;
  readonly waste: Readonly<Record<'wire' | 'cable' | 'sealant' | 'backer' | 'conduit', number>>;
  readonly rates: Readonly<Record<keyof NonNullable<Estimate['rates']>, number>>;
  readonly crewSize: number;
}

export const USUAL_ESTIMATE: StatedEstimate = {
  currency: null,
  contingency: 0.1,
  wholePacks: false,
  overcuts: true,
  bladeDiameter_m: 0.35,
  coreHoles: false,
  coreDiameter_m: 0.038,
  // five a foot: FHWA-IP-90-002, from memory
  twistsPerMetre: 5 / 0.3048,
  backerEvery_m: 0.6,
  backerLength_m: 0.05,
  waste: { wire: 0.05, cable: 0.05, sealant: 0.15, backer: 0.1, conduit: 0.05 },
  rates: {
    sawing_m_per_h: 30,
    coring_s: 300,
    laying_m_per_h: 120,
    sealing_m_per_h: 60,
    pulling_m_per_h: 60,
    splice_s: 1_200,
    test_s: 900,
    preparing_s: 1_800,
    setUp_s: 3_600
  },
  crewSize: 3
};

/** What the site states, and the usual where it states nothing. */
export function estimateOf({ estimate = {} }: Pick<Site, 'estimate'>): StatedEstimate {
  const { waste = {}, rates = {}, ...stated } = estimate;
  const merged = <T extends object>(usual: T, own: Partial<{ [K in keyof T]: T[K] | undefined }>): T =>
    Object.fromEntries(
      Object.entries(usual).map(([key, value]: [string, unknown]) => [key, own[key as keyof T] ?? value])
    ) as T;
  return {
    ...merged<Omit<StatedEstimate, 'waste' | 'rates'>>(USUAL_ESTIMATE, stated),
    waste: merged(USUAL_ESTIMATE.waste, waste),
    rates: merged(USUAL_ESTIMATE.rates, rates)
  };
}

/** Metres (of wire, cable and conduit), cubic metres, pieces that are bought at once, by the beginning of the item. */
const USUAL_PACKS: readonly (readonly [string, number])[] = [
  ['wire:', 100],
  ['cable:', 100],
  ['sealant', 0.3e-3],
  ['backer', 100],
  ['conduit', 3],
  ['splice kit', 1],
  ['label', 1],
  ['pull box', 1],
  ['cabinet', 1]
];

/** What one purchasable unit of an item holds; null where it is not bought in packs. */
export const packOf = ({ estimate }: Pick<Site, 'estimate'>, item: string): number | null =>
  estimate?.packs?.find((pack) => pack.item === item)?.size ??
  USUAL_PACKS.find(([beginning]) => item.startsWith(beginning))?.[1] ??
  null;

export const priceOf = ({ estimate }: Pick<Site, 'estimate'>, item: string): number | null =>
  estimate?.prices?.find((price) => price.item === item)?.price ?? null;
