/** What is expected of a circuit, place by place, with what was measured last. */
import { expectedOf } from '#analysis/fault-finding/checked';
import type { ExpectedFigure, MeasuringPlace } from '#analysis/fault-finding/results';
import {
  circuitOfReading,
  figuresOfReading,
  newestFirst,
  placeOfReading
} from '#analysis/fault-finding/visits';
import { READING_QUANTITIES, TEST_POINTS, type Circuit, type Quantity, type Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';

export interface LastMeasured {
  /** Place in `site.readings`. */
  readonly reading: number;
  /** Null: over the meter's range. */
  readonly value: number | null;
}

export interface Row {
  readonly key: string;
  readonly figure: ExpectedFigure;
  readonly last: LastMeasured | null;
}

export interface Group extends MeasuringPlace {
  readonly key: string;
  readonly rows: readonly Row[];
}

interface Key extends MeasuringPlace {
  readonly quantity: Quantity;
  readonly vehicle: string | null;
}

const keyOf = ({ testPoint, loop, quantity, vehicle }: Key): string =>
  JSON.stringify([testPoint, loop, quantity, quantity === 'deltaLOverL' ? vehicle : null]);

type Read = Pick<Site, 'circuits' | 'readings'>;

/** The newest figure of each kind and place; a response without a vehicle is that of the first that is asked for. */
export function lastMeasured(site: Read, circuit: Circuit): ReadonlyMap<string, LastMeasured> {
  const places = site.readings
    .map((reading, place) => ({ reading, place }))
    .filter(({ reading }) => circuitOfReading(site, reading) === circuit.id)
    .toSorted((a, b) => newestFirst(a.reading.at ?? '', b.reading.at ?? '') || b.place - a.place);
  const last = new Map<string, LastMeasured>();
  for (const { reading, place } of places)
    for (const { quantity, value } of figuresOfReading(reading)) {
      const vehicle = reading.vehicle ?? circuit.detect[0] ?? null;
      const key = keyOf({ ...placeOfReading(site, reading), quantity, vehicle });
      if (!last.has(key)) last.set(key, { reading: place, value });
    }
  return last;
}

/** In the order in which a technician goes: from the loops to the unit, and there as readings are taken down. */
export function groupsOf(
  circuit: Circuit,
  figures: readonly ExpectedFigure[],
  last: ReadonlyMap<string, LastMeasured>
): readonly Group[] {
  const places: readonly MeasuringPlace[] = TEST_POINTS.flatMap((testPoint): readonly MeasuringPlace[] =>
    testPoint === 'loop' ? loopsIn(circuit).map((loop) => ({ testPoint, loop })) : [{ testPoint, loop: null }]
  );
  return places.flatMap(({ testPoint, loop }) => {
    const here = figures.filter((each) => each.testPoint === testPoint && each.loop === loop);
    const rows = READING_QUANTITIES.flatMap((quantity) =>
      here
        .filter((each) => each.quantity === quantity)
        .map((figure): Row => {
          const key = keyOf(figure);
          return { key, figure, last: last.get(key) ?? null };
        })
    );
    return rows.length > 0 ? [{ key: JSON.stringify([testPoint, loop]), testPoint, loop, rows }] : [];
  });
}

/** Of the figures under the conditions of a reading, the one that it is held against. */
export const heldAgainst = (
  figures: readonly ExpectedFigure[] | null,
  { figure, last }: Row,
  site: Pick<Site, 'readings'>
): ExpectedFigure | null => {
  const reading = last ? site.readings[last.reading] : undefined;
  const vehicle = reading?.vehicle ?? figure.vehicle ?? undefined;
  return figures && reading
    ? expectedOf(figures, figure, vehicle === undefined ? reading : { ...reading, vehicle })
    : null;
};
