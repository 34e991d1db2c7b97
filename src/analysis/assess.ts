/** The one entry: a drawing in, everything that follows from it out, with all that there is to work with at hand. */
import { createAssessorWith, type Assessor } from './assessor';
import { laterMeans } from './later';
import { createMeans, type Means } from './means';

export type { Assessor } from './assessor';

export const createAssessor = (means: Means = createMeans()): Assessor => {
  const later = laterMeans(means);
  return createAssessorWith(means, () => later);
};
