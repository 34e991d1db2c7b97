/** What a finding follows from: as little of a drawing is worked out as a search for it needs. */
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import type { FindingRef } from './results';

export interface Needs {
  /** Circuits whose vehicles asked for, or all of whose vehicles, are driven over them. */
  readonly wanted: ReadonlySet<string>;
  /** Of the vehicles asked for, and of those driven path by path, only these; null: all. */
  readonly vehicles: ReadonlySet<string> | null;
  readonly neighbours: ReadonlySet<string>;
  /** Circuits that are driven over path by path. */
  readonly paths: ReadonlySet<string>;
  readonly steel: ReadonlySet<string>;
  /** Circuits whose channels are rated two by two. */
  readonly beats: ReadonlySet<string>;
  readonly isMeshed: boolean;
  readonly hasTraffic: boolean;
}

const NOTHING: ReadonlySet<string> = new Set();

/** Of findings that follow from the drawing and its solution alone. */
const DRAWN: Needs = {
  ...{ wanted: NOTHING, neighbours: NOTHING, paths: NOTHING, steel: NOTHING, beats: NOTHING },
  ...{ vehicles: null, isMeshed: false, hasTraffic: false }
};

/** The two that the finding of a pair is about. */
export const pairIn = (subject: string): readonly string[] => subject.split(' + ');

export const needsOf = ({ code, subject }: FindingRef): Needs => {
  const own = new Set([subject]);
  switch (code) {
    case 'undetected':
    case 'detected-in-part':
      return { ...DRAWN, wanted: own };
    case 'next-lane':
      return { ...DRAWN, neighbours: own };
    case 'missed-at-edge':
    case 'counted-twice':
    case 'next-lane-edge':
      return { ...DRAWN, paths: own };
    case 'steel-near':
      return { ...DRAWN, wanted: own, steel: own };
    case 'beating':
      return { ...DRAWN, beats: new Set(pairIn(subject)) };
    case 'vehicle-too-low':
      return { ...DRAWN, isMeshed: true };
    case 'miscounts':
      return { ...DRAWN, hasTraffic: true };
    default:
      return DRAWN;
  }
};

/** Everything that any finding needs. */
export const allNeeds = ({ circuits }: Site): Needs => {
  const all = new Set(circuits.filter((circuit) => loopsIn(circuit).length > 0).map(({ id }) => id));
  return {
    ...{ wanted: all, neighbours: all, paths: all, steel: all, beats: all },
    ...{ vehicles: null, isMeshed: true, hasTraffic: true }
  };
};
