import type { Site } from '#plan/schema';

/** What a pass of a vehicle depends on; where vehicles stand on the plan, traffic and readings are not among it. */
const DEPENDS_ON = [
  'loops',
  'circuits',
  'units',
  'lanes',
  'paths',
  'marks',
  'wires',
  'cables',
  'conduits',
  'vehicles',
  'steel',
  'pavement',
  'temperature_C'
] as const satisfies readonly (keyof Site)[];

/** No pass differs between the two drawings. */
const hasSamePasses = (a: Site, b: Site): boolean => DEPENDS_ON.every((key) => a[key] === b[key]);

/** Hands on the last drawing as long as no pass differs from it: whoever asks for passes asks again only then. */
export function keepWhileSame(): (now: Site) => Site {
  let last: Site | null = null;
  return (now) => {
    if (!last || !hasSamePasses(last, now)) last = now;
    return last;
  };
}
