/** All rules, the gravest findings first. A new finding is one file and one line here. */
import type { Site } from '#plan/schema';
import type { Assessment, Finding, Severity } from '../results';
import { beating } from './beating';
import { frequencyBand, nearResonance, notOscillating, sharedChannel, unconnected } from './channels';
import { cover, slotWidth } from './cover';
import { createContext, type FindingRule } from './finding';
import { inductanceRange } from './inductance-range';
import { lowQuality } from './low-quality';
import { miscounts } from './miscounts';
import { nextLane } from './next-lane';
import { countedTwice, missedAtEdge, nextLaneAtEdge } from './passes';
import { cornerCut, impossibleShape } from './shape';
import { steelInSlot, steelNear } from './steel-near';
import { undetected } from './undetected';
import { unusualTurns } from './unusual-turns';
import { vehicleTooLow } from './vehicle-too-low';

const RULES: readonly FindingRule[] = [
  impossibleShape,
  vehicleTooLow,
  undetected,
  missedAtEdge,
  countedTwice,
  beating,
  nextLane,
  nextLaneAtEdge,
  miscounts,
  sharedChannel,
  notOscillating,
  inductanceRange,
  lowQuality,
  steelInSlot,
  steelNear,
  slotWidth,
  cover,
  cornerCut,
  unusualTurns,
  frequencyBand,
  nearResonance,
  unconnected
];

const ORDER: readonly Severity[] = ['problem', 'caution', 'note'];

export const findingsOf = (site: Site, result: Omit<Assessment, 'findings'>): readonly Finding[] => {
  const context = createContext(site, result);
  const all = RULES.flatMap((rule) => rule(context));
  return ORDER.flatMap((severity) => all.filter((finding) => finding.severity === severity));
};
