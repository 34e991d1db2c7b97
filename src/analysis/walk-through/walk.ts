/**
 * From a complaint and the answers given so far to the next step. Where the site's own figures rule a step out, or decide
 * it, it is not asked, and the next one says why.
 */
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import type { Steps } from '../steps';
import { figuresInSteps } from './figures/gather';
import { remediesFor } from './figures/remedies';
import { withoutChannel } from './parts/ends';
import type { AskNode, Onward, Path, Place } from './node';
import { PATHS } from './paths/index';
import type { Said, Walk, WalkEnd, WalkStep, WalkWish } from './results';

/** "node:answer": an answer is known by its step, so that one given before an edit never answers another step. */
const idOf = (node: string, answer: string): string => `${node}:${answer}`;

function stepAt(
  id: string,
  node: AskNode,
  place: Place,
  given: ReadonlySet<string>,
  ruledOut: readonly Said[]
): { readonly step: WalkStep; readonly onward: Onward | null } {
  const offered = node.answers(place);
  const chosen = offered.find((each) => given.has(idOf(id, each.id))) ?? null;
  const step: WalkStep = {
    id,
    question: node.question(place),
    facts: node.facts?.(place) ?? [],
    hazards: node.hazards ?? [],
    answers: offered.map((each) => ({ id: idOf(id, each.id), label: each.label })),
    measure: node.measure ?? null,
    given: chosen && idOf(id, chosen.id),
    ruledOut
  };
  return { step, onward: chosen };
}

interface Followed extends Pick<Walk, 'steps' | 'end'> {
  readonly about: string | null;
}

/** Throws where a path leads nowhere or in a circle: a mistake of ours. */
export function follow(path: Path, figures: Omit<Place, 'about'>, answers: readonly string[]): Followed {
  const given = new Set(answers);
  const steps: WalkStep[] = [];
  let place: Place = { ...figures, about: null };
  let ruledOut: readonly Said[] = [];
  const seen = new Set<string>();
  for (let at = path.start; ;) {
    const node = path.nodes[at];
    if (!node || seen.has(at)) throw new Error(`a way through a complaint cannot go on to ${at}`);
    seen.add(at);
    let onward: Onward;
    if ('verdict' in node) {
      const end: WalkEnd = {
        id: at,
        verdict: node.verdict(place),
        remedies: node.remedies(place),
        facts: node.facts?.(place) ?? [],
        hazards: node.hazards ?? [],
        check: node.check(place),
        ruledOut
      };
      return { steps, end, about: place.about };
    }
    const decision = 'decided' in node ? node.decided(place) : (node.decide?.(place) ?? null);
    if (decision) {
      if (decision.said) ruledOut = [...ruledOut, decision.said];
      onward = decision;
    } else {
      const asked = stepAt(at, node as AskNode, place, given, ruledOut);
      steps.push(asked.step);
      ruledOut = [];
      if (!asked.onward) return { steps, end: null, about: place.about };
      onward = asked.onward;
    }
    if (onward.about !== undefined) place = { ...place, about: onward.about };
    at = onward.to;
  }
}

/** Null for a circuit that is not there or cannot be computed. */
export function* walkInSteps(site: Site, wish: WalkWish, means: Means): Steps<Walk | null> {
  const { complaint, circuit, answers, instruments } = wish;
  const path = PATHS[complaint];
  const figures = yield* figuresInSteps(site, circuit, path.needs, means, instruments);
  if (!figures) return null;
  const { channel, unit } = figures;
  if (!channel || !unit) return { complaint, circuit, steps: [], end: withoutChannel(figures) };
  const known = { ...figures, channel, unit };
  const walked = follow(path, known, answers);
  const remedies = walked.end ? yield* remediesFor(figures, walked.about, means) : [];
  const { steps, end } = remedies.length > 0 ? follow(path, { ...known, remedies }, answers) : walked;
  return { complaint, circuit, steps, end };
}
