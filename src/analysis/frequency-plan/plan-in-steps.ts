/**
 * A setting for every channel of a drawing so that the worst ratio of all pairs that can run together is smallest. Pinned
 * channels and given frequencies stay. In steps: every channel on every setting it may have, every two of them rated,
 * then the search.
 */
import type { Site } from '#plan/schema';
import { verdictOf, WATCH_FROM } from '../beating/rate';
import { NO_SHIFT, type BeatTank } from '../beating/tank';
import type { BeatVerdict } from '../results';
import type { Steps } from '../steps';
import { createSurveyor } from '../survey';
import { createOfferMaker, settingOf, type Offer } from './offers';
import type { FrequencyPlan, PlannedPair, PlanState, PlanWish, Tuning } from './plan';
import { isOpen, type PairTable, type PlanProblem } from './problem';
import { searchPlan } from './search';
import { pairTables } from './tables';

/** Shares of the whole after which each part is done. */
const SOLVED = 0.3;
const RATED = 0.6;
const WORST_PAIRS = 5;
