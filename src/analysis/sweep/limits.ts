/** What a figure should stay above or below: the same numbers by which findings judge. */
import type { Site } from '#plan/schema';
import { USUAL_BAND } from '../band';
import { WATCH_FROM } from '../beating/rate';
import { LEAST_COVER } from '../findings/cover';
import { LEAST_Q } from '../findings/low-quality';
import { LEAST_INDUCTANCE, MOST_INDUCTANCE } from '../findings/unusual-turns';
import type { Figure, FigureKind, FigureLimit, LimitKind, SweepWish } from './results';

const above = (kind: LimitKind, value: number): FigureLimit => ({ kind, value, wants: 'above' });
const below = (kind: LimitKind, value: number): FigureLimit => ({ kind, value, wants: 'below' });

const channelOf = (site: Site, id: string | null | undefined) =>
  site.circuits.find((circuit) => circuit.id === id)?.channel ?? null;

const isVaried = ({ x, family }: SweepWish, kind: string, subject: string | null | undefined): boolean =>
  [x, family].some((each) => each?.variable.kind === kind && each.variable.subject === subject);

type Limits = (site: Site, figure: Figure, wish: SweepWish) => readonly FigureLimit[];

/** A threshold that is varied itself is no line. */
const thresholdOf = (site: Site, id: string | null | undefined, wish: SweepWish) => {
  const channel = channelOf(site, id);
  return channel && !isVaried(wish, 'tripThreshold', id) ? channel : null;
};

const LIMITS: Partial<Readonly<Record<FigureKind, Limits>>> = {
  loopInductance: () => [above('least', LEAST_INDUCTANCE), below('most', MOST_INDUCTANCE)],
  cover: () => [above('least', LEAST_COVER)],
  inductance: (site, { subject }) => {
    const channel = channelOf(site, subject);
    const unit = site.units.find(({ id }) => id === channel?.unit);
    return unit ? [above('least', unit.inductanceRange_H[0]), below('most', unit.inductanceRange_H[1])] : [];
  },
  q: () => [above('least', LEAST_Q)],
  frequency: () => [above('least', USUAL_BAND[0]), below('most', USUAL_BAND[1])],
  response: (site, { subject }, wish) => {
    const channel = thresholdOf(site, subject, wish);
    if (!channel) return [];
    const { tripThreshold, releaseRatio } = channel;
    return [above('trip', tripThreshold), above('release', tripThreshold * releaseRatio)];
  },
  margin: (site, { subject }) => (channelOf(site, subject) ? [above('trip', 1)] : []),
  neighbour: (site, { subject }, wish) => {
    const channel = thresholdOf(site, subject, wish);
    return channel ? [below('trip', channel.tripThreshold)] : [];
  },
  ripple: (site, { subject, other }, wish) => {
    const [a, b] = [thresholdOf(site, subject, wish), thresholdOf(site, other, wish)];
    // which of the two suffers more is not known beforehand
    if (!a || !b || a.tripThreshold !== b.tripThreshold) return [];
    return [below('caution', WATCH_FROM * a.tripThreshold), below('problem', a.tripThreshold)];
  },
  beatRatio: () => [below('caution', WATCH_FROM), below('problem', 1)]
};

export const limitsOf: Limits = (site, figure, wish) => LIMITS[figure.kind]?.(site, figure, wish) ?? [];
