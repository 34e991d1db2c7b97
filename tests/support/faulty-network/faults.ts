/**
 * What is wrong with a circuit, by chance: each fault as a change of the built circuit. How severe it is, is drawn from the
 * distributions stated here. They leave out what no reading could show (`detectable.ts` says where the line is): a splice of
 * 0.05 Ω is less than an ohmmeter of ±0.1 Ω and a road of ±10 K can see.
 */
import { CAUSE_KINDS } from '#analysis/fault-finding/results';
import { behind } from './faults-behind';
import { inLoops } from './faults-in-loops';
import { inWiring } from './faults-in-wiring';
import type { Maker, Single } from './planted';

export const MAKERS: Readonly<Record<Single, Maker>> = { ...behind, ...inLoops, ...inWiring };

/** Every kind that has a network. */
export const SINGLES: readonly Single[] = CAUSE_KINDS.filter((kind): kind is Single => kind in MAKERS);
