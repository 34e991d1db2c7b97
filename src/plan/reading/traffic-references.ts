/** Lanes and vehicles that traffic names and the file does not hold. */
import { catalogueVehicles } from '../catalogue/vehicles';
import { traffic as trafficSchema } from '../schema';
import { idsOf } from './lists';
import { type Path, type Problem, inWords, problem } from './problem';

const LANE = 'the id of a lane in the file';
const VEHICLE = 'the id of a vehicle in the file or the catalogue';

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
      ...needed(lanes.has(data.lane), data.lane, [...path, 'lane'], LANE),
      ...data.mix.flatMap(({ vehicle }, at) =>
        needed(isVehicle(vehicle), vehicle, [...path, 'mix', at, 'vehicle'], VEHICLE)
      )
    ];
  });
  const arrivals = listAt(traffic, 'arrivals').flatMap((raw, index) => {
    const { data } = arrivalsSchema.unwrap().element.safeParse(raw);
    const path = ['traffic', 'arrivals', index] as const;
    if (!data) return [];
    return [
      ...needed(lanes.has(data.lane), data.lane, [...path, 'lane'], LANE),
      ...needed(isVehicle(data.vehicle), data.vehicle, [...path, 'vehicle'], VEHICLE)
    ];
  });
  return [...streams, ...arrivals];
}
