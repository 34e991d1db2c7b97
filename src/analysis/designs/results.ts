/** Designs of one site side by side. SI; responses are −ΔL/L. */
import type { PassPicture, PassWish } from '../passing/results';
import type { Assessment } from '../results';

/** The present design, or the id of a variant that is kept. */
export type DesignId = string | null;

export interface DesignsWish {
  /** One to three. */
  readonly designs: readonly DesignId[];
  /** For curves of one passing laid over each other; null for none. */
  readonly pass: PassWish | null;
}

export interface DesignResults {
  readonly design: DesignId;
  readonly circuits: Assessment['circuits'];
  readonly beats: Assessment['beats'];
  readonly quantities: Assessment['quantities'];
  readonly findings: Assessment['findings'];
  readonly pass: PassPicture | null;
}
