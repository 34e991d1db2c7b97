/** A prepared circuit, and short ways to ask it. */
import type {
  AskedFigure,
  ConcreteFault,
  Predicted,
  Prepared,
  UnknownName
} from '#analysis/fault-finding/forward/contract';
import { prepareInSteps } from '#analysis/fault-finding/forward/prepare';
import type { CauseKind } from '#analysis/fault-finding/results';
import { finish } from '#analysis/steps';
import type { Quantity, Site, TestPoint } from '#plan/schema';

export const preparedOf = (site: Site, id = 'C1', vehicles: readonly string[] = []): Prepared =>
  finish(prepareInSteps(site, id, vehicles))!;

export const fault = (
  kind: CauseKind,
  subject: string | null = null,
  values: Partial<Record<UnknownName, number>> = {}
): ConcreteFault => ({ kind, subject, values });

export const figure = (
  testPoint: TestPoint,
  quantity: Quantity,
  over: Partial<AskedFigure> = {}
): AskedFigure => ({
  ...{ testPoint, quantity, loop: null },
  ...{ meterFrequency_Hz: null, temperature_C: null, setting: null, vehicle: null },
  ...over
});

export const read = (prepared: Prepared, faults: readonly ConcreteFault[], asked: AskedFigure): Predicted =>
  prepared.predict(faults, [asked])[0]!;

/** Where a number has to come out. */
export const number = (prepared: Prepared, faults: readonly ConcreteFault[], asked: AskedFigure): number => {
  const value = read(prepared, faults, asked);
  if (typeof value !== 'number') throw new Error(`no number but ${value ?? 'nothing'}`);
  return value;
};
