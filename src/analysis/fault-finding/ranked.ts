/**
 * From the single causes to those that are shown. Causes that differ only in the loop, wire or circuit that they are about
 * are one entry where the readings do not tell which it is: its subject is null then.
 */
import type { Hypothesis } from './forward/contract';
import type { Posterior } from './inference/posterior';
import type { Particle } from './inference/refine';
import type { Seen } from './inference/likelihood';
import type { Suspect } from './inference/suspect';
import type { Estimate, Fault } from './results';

export interface Entry {
  readonly faults: readonly Fault[];
  readonly probability: number;
  readonly suspects: readonly Suspect[];
  readonly isUnknown: boolean;
  /**
   * Of each fault: the subjects among which the readings do not choose, the likeliest first; one where they do. Null: the
   * lead-in, or whatever no loop, wire or circuit stands for.
   */
  readonly candidates: readonly (readonly (string | null)[])[];
}

type Weighed = Posterior['suspects'][number];

/** Of its kind a subject has to have this share to be named. */
const NAMED = 0.75;
/** Candidates below this share of the likeliest one are not told. */
const WORTH_TELLING = 0.1;
const OUTSIDE = 0.025;

/** In the order of their names, so that two faults are the same pair whichever was found first. */
const orderOf = ({ hypotheses }: Suspect): readonly number[] =>
  hypotheses.map((_, k) => k).sort((a, b) => (hypotheses[a]!.kind < hypotheses[b]!.kind ? -1 : 1) || a - b);

const kindsOf = (suspect: Suspect): string =>
  suspect.isUnknown
    ? 'unknown'
    : orderOf(suspect)
        .map((k) => suspect.hypotheses[k]!.kind)
        .join(' + ');

const grouped = <T>(list: readonly T[], keyOf: (each: T) => string): readonly (readonly T[])[] => {
  const groups = new Map<string, T[]>();
  for (const each of list) groups.set(keyOf(each), [...(groups.get(keyOf(each)) ?? []), each]);
  return [...groups.values()];
};

const sum = (list: readonly Weighed[]): number => list.reduce((all, each) => all + each.probability, 0);

interface Span {
  readonly span: readonly [number, number];
  readonly mass: number;
}

/** Of an unknown that comes in steps: the likeliest, and the steps beyond which little lies. */
const wholeEstimate = (spans: readonly Span[]): Omit<Estimate, 'name'> => {
  const masses = new Map<number, number>();
  let all = 0;
  for (const { span, mass } of spans) {
    masses.set(span[0], (masses.get(span[0]) ?? 0) + mass);
    all += mass;
  }
  const steps = [...masses].sort(([a], [b]) => a - b);
  const [value] = steps.reduce((best, each) => (each[1] > best[1] ? each : best));
  const endOf = (from: readonly (readonly [number, number])[]): number => {
    let sum = 0;
    return from.find(([, mass]) => (sum += mass) > OUTSIDE * all)?.[0] ?? value;
  };
  return { value, low: endOf(steps), high: endOf([...steps].reverse()) };
};

/** Value below which the share `wanted` lies; each span is even within itself. */
const quantileOf = (spans: readonly Span[], wanted: number): number => {
  const all = spans.reduce((total, { mass }) => total + mass, 0);
  const below = (value: number): number =>
    spans.reduce((total, { span: [from, to], mass }) => {
      if (value >= to) return total + mass;
      return value <= from ? total : total + (mass * (value - from)) / (to - from);
    }, 0);
  let low = Math.min(...spans.map(({ span }) => span[0]));
  let high = Math.max(...spans.map(({ span }) => span[1]));
  for (let step = 0; step < 60 && high - low > 1e-9 * Math.abs(high); step++) {
    const middle = (low + high) / 2;
    if (below(middle) < wanted * all) low = middle;
    else high = middle;
  }
  return high;
};

const placeOf = (hypotheses: readonly Hypothesis[], fault: number): number =>
  hypotheses.slice(0, fault).reduce((count, { unknowns }) => count + unknowns.length, 0);

const estimatesOf = (suspects: readonly Weighed[], fault: number): readonly Estimate[] => {
  const first = suspects[0]!;
  const { unknowns } = first.hypotheses[orderOf(first)[fault]!]!;
  return unknowns.map(({ name, scale }, unknown): Estimate => {
    const spans = suspects.flatMap((suspect): Span[] => {
      const at = placeOf(suspect.hypotheses, orderOf(suspect)[fault]!) + unknown;
      return suspect.particles.map(({ spans: all, logMass }) => ({
        span: all[at]!,
        mass: suspect.probability * Math.exp(logMass - suspect.logMass)
      }));
    });
    if (scale === 'whole') return { name, ...wholeEstimate(spans) };
    return {
      name,
      value: quantileOf(spans, 0.5),
      low: quantileOf(spans, OUTSIDE),
      high: quantileOf(spans, 1 - OUTSIDE)
    };
  });
};

const subjectsOf = (suspect: Suspect): readonly (string | null)[] =>
  orderOf(suspect).map((k) => suspect.hypotheses[k]!.subject);

const entryOf = (suspects: readonly Weighed[]): Entry => {
  const first = suspects[0]!;
  const probability = sum(suspects);
  const order = orderOf(first);
  const candidates = order.map((_, fault) => {
    const shares = grouped(suspects, (each) => subjectsOf(each)[fault] ?? '')
      .map((each) => ({ subject: subjectsOf(each[0]!)[fault] ?? null, share: sum(each) }))
      .sort((a, b) => b.share - a.share);
    const least = WORTH_TELLING * (shares[0]?.share ?? 0);
    return shares.flatMap(({ subject, share }) => (share >= least ? [subject] : []));
  });
  const faults = order.map((k, fault): Fault => {
    const subjects = new Set(suspects.map((each) => subjectsOf(each)[fault]));
    const subject = subjects.size === 1 ? first.hypotheses[k]!.subject : null;
    return { kind: first.hypotheses[k]!.kind, subject, estimates: estimatesOf(suspects, fault) };
  });
  const single = first.isUnknown ? 'something else' : 'nothing wrong';
  return {
    faults: faults.length > 0 ? faults : [{ kind: single, subject: null, estimates: [] }],
    probability,
    suspects,
    isUnknown: first.isUnknown,
    candidates
  };
};

/** Those of one kind: one by one where one of them stands out, together where none does. */
const entriesOf = (ofKind: readonly Weighed[]): readonly Entry[] => {
  const bySubject = [...grouped(ofKind, (each) => JSON.stringify(subjectsOf(each)))].sort(
    (a, b) => sum(b) - sum(a)
  );
  const isNamed = sum(bySubject[0]!) >= NAMED * sum(ofKind);
  return isNamed ? bySubject.map(entryOf) : [entryOf(bySubject.flat())];
};

/** The likeliest first. */
export const entriesFrom = ({ suspects }: Posterior): readonly Entry[] =>
  grouped(suspects, kindsOf)
    .flatMap(entriesOf)
    .sort((a, b) => b.probability - a.probability);

export interface Place {
  readonly particle: Particle<Seen>;
  readonly suspect: Suspect;
  /** A share by which every number may be off by itself. */
  readonly unmodelled: number;
  /** Of the entry; adds up to one. */
  readonly share: number;
}

/** The places of an entry's unknowns that hold most of it, at most `count`. */
export const placesOf = ({ suspects }: Pick<Entry, 'suspects'>, count: number): readonly Place[] => {
  const places = suspects
    .flatMap((suspect) =>
      suspect.particles.map((particle, k) => ({ particle, suspect, unmodelled: suspect.unmodelled[k]! }))
    )
    .sort((a, b) => b.particle.logMass - a.particle.logMass)
    .slice(0, count);
  const most = places[0]?.particle.logMass ?? 0;
  const all = places.reduce((total, { particle }) => total + Math.exp(particle.logMass - most), 0);
  return places.map((each) => ({ ...each, share: Math.exp(each.particle.logMass - most) / all }));
};

/** Of one cause's unknowns. */
const PLACES_BEFOREHAND = 8;

/** An even pick of places of all these entries, with the weight that each had before anything was read. */
export const placesBeforehand = (entries: readonly Entry[]): readonly Place[] => {
  const places = entries.flatMap(({ suspects }) =>
    suspects.flatMap((suspect): Place[] => {
      const step = Math.max(1, Math.ceil(suspect.particles.length / PLACES_BEFOREHAND));
      return suspect.particles.flatMap((particle, k) =>
        k % step === 0
          ? [
              {
                ...{ particle, suspect },
                unmodelled: suspect.unmodelled[k]!,
                share: step * Math.exp(particle.logMass - particle.look.logLikelihood)
              }
            ]
          : []
      );
    })
  );
  const all = places.reduce((sum, { share }) => sum + share, 0);
  return places.map((each) => ({ ...each, share: each.share / all }));
};
