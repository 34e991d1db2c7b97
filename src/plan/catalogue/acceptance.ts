/**
 * Published limits that a new loop is accepted by. Each has its source under `field.source.`; what stands here from
 * memory of the source is marked so. A site chooses which of them hold.
 */
import type { Quantity, Site, TestPoint } from '../schema';

export interface AcceptanceLimit {
  readonly id: string;
  readonly quantity: Quantity;
  readonly testPoints: readonly TestPoint[];
  readonly least: number | null;
  readonly most: number | null;
  /** Under which it holds. */
  readonly frequency_Hz: number | null;
  readonly voltage_V: number | null;
  readonly isFromMemory: boolean;
}

export const ACCEPTANCE_LIMITS: readonly AcceptanceLimit[] = [
  {
    id: 'wac-296-46b-300-insulation',
    quantity: 'insulation_ohm',
    testPoints: ['loop', 'pull-box', 'cabinet'],
    least: 50e6,
    most: null,
    frequency_Hz: null,
    voltage_V: 500,
    isFromMemory: false
  },
  {
    // California Standard Specifications, section 86
    id: 'california-86-insulation',
    quantity: 'insulation_ohm',
    testPoints: ['loop', 'pull-box', 'cabinet'],
    least: 100e6,
    most: null,
    frequency_Hz: null,
    voltage_V: 500,
    isFromMemory: true
  },
  {
    // a city's revision of WSDOT 8-20.3(14)D
    id: 'wsdot-8-20-resistance',
    quantity: 'resistanceDc_ohm',
    testPoints: ['cabinet'],
    least: null,
    most: 5,
    frequency_Hz: null,
    voltage_V: null,
    isFromMemory: false
  },
  {
    // the same
    id: 'wsdot-8-20-q',
    quantity: 'q',
    testPoints: ['cabinet'],
    least: 5,
    most: null,
    frequency_Hz: 50e3,
    voltage_V: null,
    isFromMemory: false
  },
  {
    id: 'fp-96-636-inductance',
    quantity: 'inductance_H',
    testPoints: ['loop'],
    least: 60e-6,
    most: 100e-6,
    frequency_Hz: null,
    voltage_V: null,
    isFromMemory: false
  }
];

/** Those that hold where the site chooses none. */
const USUAL_LIMITS: readonly string[] = [
  'wac-296-46b-300-insulation',
  'wsdot-8-20-resistance',
  'wsdot-8-20-q'
];

export const limitsOfSite = ({ fieldCheck }: Pick<Site, 'fieldCheck'>): readonly AcceptanceLimit[] => {
  const chosen = new Set(fieldCheck?.limits ?? USUAL_LIMITS);
  return ACCEPTANCE_LIMITS.filter(({ id }) => chosen.has(id));
};
