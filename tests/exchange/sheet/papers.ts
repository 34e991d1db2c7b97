/** Papers to try a sheet on. */
export { PAPERS, SCALES } from '#plan/schema/sheet';

export const ORIENTATIONS = ['portrait', 'landscape'] as const;
