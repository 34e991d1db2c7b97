import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, seriesOf, unitOf } from './parts';
import type { Situation } from './situation';

export const bicycleStopLine: Situation = {
  id: 'bicycle-stop-line',
  title: 'Bicycle stop line',
  description: 'A bicycle lane with a diagonal loop beside a traffic lane with a quadrupole.',
  build: () => ({
    ...emptySite('Bicycle stop line'),
    lanes: [
      { ...laneAlong('lane1', 'Traffic', -1.75, -20, 3), largestVehicle: 'lorry' },
      { ...laneAlong('lane2', 'Bicycles', 1, -20, 3, 2), largestVehicle: 'bicycle' }
    ],
    marks: [
      markOf('m1', 'stop-line', [
        [-3.5, 0],
        [2, 0]
      ]),
      markOf('m2', 'pull-box', [[2.8, -3]]),
      markOf('m3', 'cabinet', [[4.5, 2]])
    ],
    loops: [
      loopOf(
        'L1',
        'Traffic',
        { kind: 'quadrupole', centre: [-1.75, -3.6], width: 1.8, length: 6, rotation: 0 },
        6,
        2
      ),
      loopOf(
        'L2',
        'Bicycles',
        { kind: 'diagonal', centre: [1, -1.8], width: 1.2, length: 1.8, rotation: 0 },
        3
      )
    ],
    circuits: [
      seriesOf('C1', 'Traffic', ['L1'], 15, channelOf('U1', 1, 2, 0.0015), ['car', 'van']),
      seriesOf('C2', 'Bicycles', ['L2'], 15, channelOf('U1', 2, 3, 0.0003), ['bicycle'])
    ],
    units: [unitOf('U1', 'Cabinet unit', 2)],
    probes: [{ vehicle: 'bicycle', at: [1.3, -1.8], heading: 90 }]
  })
};
