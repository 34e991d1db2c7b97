import { expect, it } from 'vitest';
import { readingsReportInSteps } from '#analysis/fault-finding/readings-report';
import { finish } from '#analysis/steps';
import { fault } from './support/prepared';
import { AT_CABINET, kindsOf, readingsUnder, site } from './support/readings';

it('evaluates every visit of every circuit by itself, the newest first', () => {
  const splice = fault('resistive splice', null, { resistance_ohm: 5 });
  const readings = [
    ...readingsUnder([], [AT_CABINET], { at: '2031-05-04T10:00', isCommissioning: true }),
    ...readingsUnder([splice], [AT_CABINET], { at: '2032-06-11T08:00' })
  ];
  const reports = finish(readingsReportInSteps({ ...site, readings }));
  expect(reports.map(({ circuit, day, readings: places }) => [circuit, day, places])).toEqual([
    ['C1', '2032-06-11', [1]],
    ['C1', '2031-05-04', [0]]
  ]);
  const [later, before] = reports.map(({ diagnosis }) => diagnosis);
  expect(kindsOf(later!.causes[0]!)).toBe('resistive splice');
  expect(before!.fits).toBe(true);
  expect(later!.figures.find(({ quantity }) => quantity === 'resistanceDc_ohm')!.verdict).toBe(
    'beyond a limit'
  );
});
