/** Vehicles that pass, and calls over time, in the report for people. */
import { typed } from '#units/digits';
import type { CallSummary } from '#analysis/calls/results';
import type { DetectionHeight, PassReadout } from '#analysis/passing/results';
import type { QuantityKind } from '#units/kind';
import { block, blockIfAny } from './text-table';

type Say = (value: number, kind: QuantityKind) => string;

export const passBlock = (passes: readonly PassReadout[], say: Say): string[] =>
  block(
    'Vehicles along the lanes, path by path',
    [
      ['circuit', 'vehicle', 'lane', 'beside the middle', '−ΔL/L', 'times threshold', 'detections', 'zone'],
      ...passes.map((pass) => [
        pass.circuit,
        pass.vehicle,
        `${pass.lane ?? 'none'}${pass.isServed ? '' : ' (next lane)'}`,
        say(pass.offset_m, 'length'),
        say(pass.response, 'ratio'),
        pass.margin === null ? '–' : typed(pass.margin.toPrecision(3)),
        String(pass.detections),
        pass.zone ? say(pass.zone.length_m, 'length') : '–'
      ])
    ],
    'none'
  );

export const heightBlock = (heights: readonly DetectionHeight[], say: Say): string[] =>
  blockIfAny('Height up to which a plate of a car makes a call', [
    ['circuit', 'loop', 'height', 'two thirds of the shorter side'],
    ...heights.map(({ circuit, loop, height_m, ruleOfThumb_m }) => [
      circuit,
      loop,
      height_m === null ? 'none' : say(height_m, 'length'),
      say(ruleOfThumb_m, 'length')
    ])
  ]);

const percent = (share: number): string => `${typed((100 * share).toFixed(1))} %`;

export const callBlock = (calls: readonly CallSummary[]): string[] =>
  block(
    'Calls with the traffic of the site',
    [
      ['circuit', 'vehicles', 'calls', 'missed', 'merged', 'split', 'false', 'occupied', 'really'],
      ...calls.map((each) => [
        each.circuit,
        ...[each.vehicles, each.calls, each.missed, each.merged, each.split, each.false].map(String),
        percent(each.occupancy),
        percent(each.trueOccupancy)
      ])
    ],
    'no traffic on this site'
  );
