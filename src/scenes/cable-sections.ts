import type { Circuit } from '#plan/schema';

export interface CableSection {
  readonly cable: string;
  /** Metres. */
  readonly length: number;
}

/** The cables of the lead-in as they follow each other from the terminals to the pull box; one without length is left out. */
export const sectionsOf = ({ leadIn }: Circuit): readonly CableSection[] =>
  [leadIn, ...(leadIn.further ?? [])].filter(({ length }) => length > 0).reverse();
