/** Rows that show how a table is filled in: one of every shape, on a road that is nobody's. */
import type { Loop } from '#plan/schema';

const usual = {
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
  tail: { length: 4 }
} as const;

export const EXAMPLES: readonly Loop[] = [
  {
    ...usual,
    id: 'A1',
    name: 'Stop line',
    shape: { kind: 'rectangle', centre: [0, -3], width: 1.8, length: 1.8, rotation: 0, cornerCut: 0.2 }
  },
  {
    ...usual,
    id: 'A2',
    name: 'Advance',
    turns: 4,
    shape: { kind: 'circle', centre: [0, -30], diameter: 1.8 }
  },
  {
    ...usual,
    id: 'A3',
    name: 'Long',
    turns: 2,
    shape: { kind: 'quadrupole', centre: [3.5, -6], width: 1.8, length: 6, rotation: 0 }
  },
  {
    ...usual,
    id: 'A4',
    name: 'Bicycles',
    shape: { kind: 'diagonal', centre: [7, -3], width: 1.8, length: 1.8, rotation: 0 }
  },
  {
    ...usual,
    id: 'A5',
    name: 'Bend',
    shape: { kind: 'polygon', points: [[10, -4], [12, -4], [11.5, -2], [10, -2]] } // prettier-ignore
  }
];
