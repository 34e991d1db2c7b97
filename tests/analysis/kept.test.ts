/**
 * What is kept from one assessment to the next is kept under all that it depends on: whichever number of a drawing changes,
 * an assessor that knows the drawing before says what one says that has never seen it, to the last bit.
 */
import { describe, expect, it } from 'vitest';
import { createAssessor, type Assessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { createSurveyor } from '#analysis/survey';
import { site as schema } from '#plan/schema';
import { PATIENCE } from '../physics/support/arbitraries';
import { channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from './support/sites';

type Step = string | number;

const site = siteOf({
  lanes: [lane('lane1', 0, { width: 2.6 }), lane('lane2', 2.8, { width: 2.6, largestVehicle: 'van' })],
  loops: [
    loop('L1', square(0, 0, 1.2), { addedResistance_ohm: 0.1 }),
    loop('L2', square(0, 2.4, 1.2), { wire: 'w1' }),
    loop('L3', square(2.8, 0, 1.2))
  ],
  circuits: [
    circuit('C1', ['L1', 'L2'], { detect: ['van'], leadIn: { cable: 'k1', length: 20 } }),
    circuit('C2', ['L3'], {
      detect: ['bicycle'],
      channel: channel('U2', 1, { frequency_Hz: null, frequencySetting: 2 })
    })
  ],
  units: [unit('U1', { scansInTurn: false }), unit('U2', { scansInTurn: false })],
  conduits: [{ id: 'd1', name: '', circuits: ['C1', 'C2'], length: 40 }],
  wires: [{ id: 'w1', name: '', conductorDiameter: 0.0016, insulatedDiameter: 0.0035, insulationPermittivity: 2.5 }], // prettier-ignore
  cables: [{ id: 'k1', name: '', resistancePerMetre_ohm: 0.017, inductancePerMetre_H: 7e-7, capacitancePerMetre_F: 8e-11 }], // prettier-ignore
  vehicles: QUICK_VEHICLES,
  probes: [{ vehicle: 'van', at: [0.2, -1], heading: 80 }],
  pavement: { material: 'asphalt', relativePermittivity: 5, conductivity_S_m: 0.001 },
  temperatureRange_C: [-20, 50],
  acceptedSteelCost: 0.1,
  tolerances: { dimensions_m: 0.02, depth_m: 0.01, wirePitch_m: 0.0004, leadInLength_m: 2, temperature_C: 15, relativePermittivity: 3, vehicleHeight_m: 0.05 }, // prettier-ignore
  traffic: { seed: 3, duration_s: 30, streams: [{ lane: 'lane1', flow_per_h: 900, speed_m_s: 12, mix: [{ vehicle: 'van', share: 1 }] }], arrivals: [] } // prettier-ignore
});

/** One of every number and every yes or no that a drawing has, whatever list it stands in. */
const leaves = new Map<string, readonly Step[]>();
const walk = (value: unknown, path: readonly Step[]): void => {
  if (typeof value === 'number' || typeof value === 'boolean') {
    const kind = path.filter((step) => typeof step === 'string').join('.');
    if (!leaves.has(kind)) leaves.set(kind, path);
  } else if (typeof value === 'object' && value !== null)
    for (const [key, each] of Object.entries(value))
      walk(each, [...path, Array.isArray(value) ? Number(key) : key]);
};
walk(site, []);

const COUNTED: ReadonlySet<Step> = new Set(['turns', 'number', 'frequencySetting', 'channels', 'seed']);
const another = (value: unknown, name: Step): unknown => {
  if (typeof value !== 'number') return !value;
  return COUNTED.has(name) ? value + 1 : value === 0 ? 0.03 : value * 1.07;
};

const changed = (whole: unknown, [first, ...rest]: readonly Step[], name = first!): unknown => {
  const copy: Record<Step, unknown> = (Array.isArray(whole) ? [...(whole as unknown[])] : { ...(whole as object) }) as Record<Step, unknown>; // prettier-ignore
  copy[first!] = rest.length > 0 ? changed(copy[first!], rest) : another(copy[first!], name);
  return copy;
};

describe('whichever number changes', { timeout: PATIENCE }, () => {
  // vehicles are made ready once; nothing else is shared
  const { bodies } = createMeans();
  const fresh = (): Assessor => createAssessor({ surveyor: createSurveyor(), bodies });
  const kept = fresh();
  kept.assess(site, 'complete');

  const edits = [...leaves].flatMap(([kind, path]) => {
    const edited = schema.safeParse(changed(site, path));
    return edited.success ? [[kind, edited.data] as const] : [];
  });

  it('there are enough of them', () => {
    expect(edits.length).toBeGreaterThan(50);
  });

  it.each(edits)('%s', (_, edited) => {
    const found = JSON.stringify(kept.assess(edited, 'complete'));
    expect(found === JSON.stringify(fresh().assess(edited, 'complete'))).toBe(true);
  });
});
