/** A site of one square loop in a lane, on a unit of its own: what most tasks begin with. */
export interface OneLoop {
  readonly name: string;
  readonly loop: string;
  readonly circuit: string;
  readonly turns?: number;
  readonly leadIn?: number;
  readonly detect?: readonly string[];
  /** The least inductance that the unit works with, H. */
  readonly least?: number;
  /** Fields of the document beside or in place of those. */
  readonly over?: object;
}

const INBOUND = { id: 'lane1', name: 'Inbound', centreline: [[0, -20], [0, 20]], width: 3.5 }; // prettier-ignore

export const oneLoop = ({
  name,
  loop,
  circuit,
  turns = 3,
  leadIn = 30,
  detect = ['car'],
  least = 2e-5,
  over = {}
}: OneLoop): string =>
  JSON.stringify({
    format: 'kerfline-site',
    version: 1,
    name,
    lanes: [INBOUND],
    loops: [
      {
        id: 'L1',
        name: loop,
        turns,
        wire: 'awg14',
        slot: { depth: 0.05, width: 0.008 },
        shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8 }
      }
    ],
    units: [
      {
        id: 'U1',
        channels: 1,
        scansInTurn: true,
        measuringTime_s: 0.005,
        settings_F: [1e-7],
        inductanceRange_H: [least, 2e-3]
      }
    ],
    circuits: [
      {
        id: 'C1',
        name: circuit,
        strings: [[{ loop: 'L1' }]],
        leadIn: { cable: 'pair-14', length: leadIn },
        channel: { unit: 'U1', number: 1, tripThreshold: 0.0016 },
        detect
      }
    ],
    ...over
  });
