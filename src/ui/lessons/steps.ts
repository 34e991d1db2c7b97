/** The way through a lesson. */
export const STEPS = ['question', 'experiment', 'outcome'] as const;
export type Step = (typeof STEPS)[number];
