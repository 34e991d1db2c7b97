/** A site with every kind of thing and every kind of reference in it. */
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';

const loop = (id: string, x: number) => ({
  id,
  name: `Loop ${id}`,
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008 },
  shape: { kind: 'rectangle', centre: [x, 0], width: 1.8, length: 1.8, cornerCut: 0.2 }
});

const channel = (number: number) => ({ unit: 'U1', number, tripThreshold: 0.001 * number });

export function fullSite(): Site {
  const reading = readSite(
    JSON.stringify({
      format: 'kerfline-site',
      version: 1,
      name: 'Tannery Yard',
      lanes: [{ id: 'lane1', centreline: [[0, -9], [0, 9]], width: 3.5, largestVehicle: 'own' }], // prettier-ignore
      marks: [{ id: 'm1', kind: 'stop-line', points: [[-1, 5], [1, 5]] }], // prettier-ignore
      loops: [loop('L1', 0), loop('L2', 4), loop('L3', 8), loop('L4', 12)],
      cables: [
        { id: 'k1', resistancePerMetre_ohm: 0.02, inductancePerMetre_H: 7e-7, capacitancePerMetre_F: 8e-11 }
      ],
      circuits: [
        {
          id: 'C1',
          strings: [[{ loop: 'L1' }, { loop: 'L2', reversed: true }]],
          leadIn: { cable: 'k1', length: 40 },
          channel: channel(1)
        },
        {
          id: 'C2',
          strings: [[{ loop: 'L3' }]],
          leadIn: { cable: 'pair-14', length: 25 },
          channel: channel(2)
        }
      ],
      units: [
        {
          id: 'U1',
          channels: 2,
          scansInTurn: true,
          measuringTime_s: 0.005,
          settings_F: [2.2e-7, 1e-7],
          inductanceRange_H: [2e-5, 2e-3]
        }
      ],
      vehicles: [
        { id: 'own', parts: [{ kind: 'plate', centre: [0, 0], width: 1.5, length: 4, height: 0.5 }] }
      ],
      probes: [{ vehicle: 'own', at: [0, 1] }, { vehicle: 'car', at: [4, 1] }], // prettier-ignore
      readings: [{ circuit: 'C1', q: 20 }, { circuit: 'C2', q: 15 }, { note: 'rain' }]
    })
  );
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}
