/** Lanes and vehicles that traffic names and the file does not hold. */
import { t } from '#i18n/message';
import { catalogueVehicles } from '../catalogue/vehicles';
import { traffic as trafficSchema } from '../schema';
import { idsOf } from './lists';
import { type Path, type Problem, inWords, problem } from './problem';

const { streams: streamsSchema, arrivals: arrivalsSchema } = trafficSchema.shape;

const listAt = (value: unknown, key: string): readonly unknown[] => {
  const list = typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : null;
  return Array.isArray(list) ? (list as unknown[]) : [];
};

/** Entries that the schema refuses are left out: their own problems are told elsewhere. */
export function danglingTraffic(document: object): readonly Problem[] {
  const lanes = idsOf(document, 'lanes');
  const own = idsOf(document, 'vehicles');
  const isVehicle = (id: string): boolean => own.has(id) || catalogueVehicles.some((each) => each.id === id);
  const needed = (isThere: boolean, id: string, path: Path, expected: string): readonly Problem[] =>
    isThere ? [] : [problem(path, inWords(id), expected)];
  const traffic = (document as Readonly<Record<string, unknown>>)['traffic'];
  const streams = listAt(traffic, 'streams').flatMap((raw, index) => {
    const { data } = streamsSchema.unwrap().element.safeParse(raw);
    const path = ['traffic', 'streams', index] as const;
    if (!data) return [];
    return [
      ...needed(lanes.has(data.lane), data.lane, [...path, 'lane'], t('read.id.lane')),
      ...data.mix.flatMap(({ vehicle }, at) =>
        needed(isVehicle(vehicle), vehicle, [...path, 'mix', at, 'vehicle'], t('read.id.vehicle'))
      )
    ];
  });
  const arrivals = listAt(traffic, 'arrivals').flatMap((raw, index) => {
    const { data } = arrivalsSchema.unwrap().element.safeParse(raw);
    const path = ['traffic', 'arrivals', index] as const;
    if (!data) return [];
    return [
      ...needed(lanes.has(data.lane), data.lane, [...path, 'lane'], t('read.id.lane')),
      ...needed(isVehicle(data.vehicle), data.vehicle, [...path, 'vehicle'], t('read.id.vehicle'))
    ];
  });
  return [...streams, ...arrivals];
}
