/** Currents in a vehicle in words and figures. */
import type { CurrentsPicture } from '#analysis/field-picture/results';
import type { Table } from '#exchange/tables/table';
import { t } from '#i18n/message';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { DisplayUnits } from '#plan/schema';
import { typeset } from '#units/digits';
import { format } from '#units/format';
import { lineStep, mostAround } from './currents';
import { lengthUnit } from './table';
import { fine } from './words';

/** Amperes per ampere: "0.02", without noughts behind it. */
export const currentText = (current: number): string => typeset(String(Number(current.toPrecision(2))));

/** What is seen, sentence by sentence. */
export function currentWords(picture: CurrentsPicture, units: DisplayUnits): readonly string[] {
  const strongest = [...picture.plates].sort((a, b) => mostAround(b) - mostAround(a))[0];
  const step = lineStep(picture);
  const inRings = Math.max(0, ...picture.rings.map(({ current }) => Math.abs(current)));
  return [
    ...(strongest && step > 0
      ? [
          t('seen.currentBetween', { step: currentText(step) }),
          t('seen.plateCurrents', {
            height: format(strongest.z_m, 'length', units).text,
            most: fine(mostAround(strongest))
          }),
          t('seen.againstLoop')
        ]
      : [t('seen.noCurrents')]),
    ...(picture.rings.length > 0
      ? [t('seen.ringCurrents', { count: picture.rings.length, most: fine(inRings) })]
      : [])
  ];
}

export interface PartRow {
  readonly name: string;
  readonly height_m: number;
  /** Amperes per ampere: the most that goes round in a plate, the current of a ring. */
  readonly current: number;
}

export const partRows = (picture: CurrentsPicture, vehicle: CatalogueVehicle): readonly PartRow[] => [
  ...picture.plates.map((plate, n) => ({
    name: t('seen.part.plate', { number: n + 1 }),
    height_m: plate.z_m,
    current: mostAround(plate)
  })),
  ...picture.rings.map(({ part, current }, n) => {
    const ring = vehicle.parts[part];
    return {
      name: t('seen.part.ring', { number: n + 1 }),
      height_m: ring?.kind === 'ring' ? ring.centre[2] : 0,
      current
    };
  })
];

/** Every node of every plate, and every ring, in full. */
export function currentsTable(
  picture: CurrentsPicture,
  vehicle: CatalogueVehicle,
  units: DisplayUnits,
  title: string
): Table {
  const { symbol: unit, metres } = lengthUnit(units);
  const number = (head: string) => ({ head, kind: 'number' as const });
  const rings = partRows({ ...picture, plates: [] }, vehicle);
  return {
    title,
    columns: [
      { head: t('seen.column.part'), kind: 'text' },
      number(t('seen.column.right', { unit })),
      number(t('seen.column.ahead', { unit })),
      number(t('seen.column.partHeight', { unit })),
      number(t('seen.column.psi')),
      number(t('seen.column.current'))
    ],
    rows: [
      ...picture.plates.flatMap(({ xs, ys, psi, z_m }, n) =>
        ys.flatMap((y, row) =>
          xs.map((x, column) => [
            t('seen.part.plate', { number: n + 1 }),
            x / metres,
            y / metres,
            z_m / metres,
            psi[row * xs.length + column]!,
            null
          ])
        )
      ),
      ...rings.map(({ name, height_m, current }) => [name, null, null, height_m / metres, null, current])
    ]
  };
}
