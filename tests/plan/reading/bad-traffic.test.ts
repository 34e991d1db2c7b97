/** A file whose traffic names what is not there, or is not well formed, is refused with the place and what belongs there. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { soundDocument, withValue } from './sound-document';

const LANE = 'the id of a lane in the file';
const VEHICLE = 'the id of a vehicle in the file or the catalogue';

const busyDocument = () =>
  withValue(soundDocument(), 'traffic', {
    streams: [
      {
        lane: 'lane1',
        flow_per_h: 300,
        speed_m_s: 12,
        mix: [{ vehicle: 'car', share: 1 }, { vehicle: 'v1', share: 1 }],
        signal: { cycle_s: 60, greenFrom_s: 0, green_s: 20, line_m: 15 }
      }
    ],
    arrivals: [{ lane: 'lane1', vehicle: 'car', at_s: 2, speed_m_s: 9, stop: { at_m: 12, for_s: 30 } }]
  }); // prettier-ignore

const rows: readonly (readonly [path: string, value: unknown, found: string, expected: string])[] = [
  ['traffic.streams[0].lane', 'lane9', '"lane9" (text)', LANE],
  ['traffic.streams[0].mix[1].vehicle', 'tram', '"tram" (text)', VEHICLE],
  ['traffic.arrivals[0].lane', 'L1', '"L1" (text)', LANE],
  ['traffic.arrivals[0].vehicle', 'tram', '"tram" (text)', VEHICLE],
  ['traffic.streams[0].mix', [], 'a list of 0 entries', 'a list of 1 to 100 entries'],
  ['traffic.streams[0].flow_per_h', -1, '-1', 'a number from 0 to 3000'],
  ['traffic.streams[0].signal.cycle_s', 1, '1', 'a number from 5 to 600'],
  ['traffic.streams[0].signal', 'red', '"red" (text)', 'an object or null'],
  ['traffic.arrivals[0].speed_m_s', 'fast', '"fast" (text)', 'a number from 0.2 to 70'],
  ['traffic.arrivals[0].stop.for_s', -3, '-3', 'a number from 0 to 86400'],
  ['traffic.seed', 0.5, '0.5', 'a whole number from 0 to 2147483647'],
  ['traffic.arrivals', 'many', '"many" (text)', 'a list of at most 2000 entries'],
  ['traffic', 'heavy', '"heavy" (text)', 'an object']
];

describe('a file with bad traffic', () => {
  it('was sound before', () => {
    const reading = readSite(JSON.stringify(busyDocument()));
    expect(reading.ok && reading.site.traffic?.streams[0]?.leastHeadway_s).toBe(1.8);
  });

  it.each(rows)('%s = %j', (path, value, found, expected) => {
    const reading = readSite(JSON.stringify(withValue(busyDocument(), path, value)));
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problems).toEqual([expect.objectContaining({ path, found, expected })]);
  });

  it('tells of every name that is missing', () => {
    const document = withValue(busyDocument(), 'traffic.streams[0].lane', 'lane8');
    const reading = readSite(JSON.stringify(withValue(document, 'traffic.arrivals[0].vehicle', 'tram')));
    const places = reading.ok ? [] : reading.problems.map(({ path }) => path);
    expect(places).toEqual(['traffic.streams[0].lane', 'traffic.arrivals[0].vehicle']);
  });
});

describe('a path', () => {
  const points = [[0, 0], [3, 4]]; // prettier-ignore

  it('needs an id of its own and a length', () => {
    const read = (paths: unknown) => readSite(JSON.stringify(withValue(soundDocument(), 'paths', paths)));
    expect(read([{ id: 'p1', points }]).ok).toBe(true);
    const twice = read([{ id: 'p1', points }, { id: 'p1', points }]); // prettier-ignore
    expect(!twice.ok && twice.problems[0]?.path).toBe('paths[1].id');
    const short = read([{ id: 'p1', points: [[1, 1], [1, 1]] }]); // prettier-ignore
    expect(!short.ok && short.problems[0]?.expected).toBe('points that lie apart');
  });
});
