/** Which loops a circuit holds and which circuit holds a loop. */
import type { Circuit, Site } from './schema';

export const loopsIn = ({ strings }: Pick<Circuit, 'strings'>): readonly string[] =>
  strings.flatMap((string) => string.map(({ loop }) => loop));

export const circuitWith = (site: Pick<Site, 'circuits'>, loop: string): Circuit | undefined =>
  site.circuits.find(({ strings }) => strings.some((string) => string.some((entry) => entry.loop === loop)));

/** The strings without these loops and without strings that are empty then. */
export const withoutLoops = (strings: Circuit['strings'], loops: ReadonlySet<string>): Circuit['strings'] =>
  strings
    .map((string) => string.filter(({ loop }) => !loops.has(loop)))
    .filter((string) => string.length > 0);
