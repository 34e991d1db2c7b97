/** Kept variants in the report: what each of them comes to, by the names that the present design has. */
import type { DesignResults } from '#analysis/designs/results';
import type { Assessment } from '#analysis/results';
import { quantitiesOf } from '#analysis/takeoff/quantities';
import type { Site } from '#plan/schema';
import { designSite, holdsPresent, variantsOf } from '#plan/variants';

export interface ReportedDesign {
  readonly id: string;
  readonly name: string;
  /** The present design says the same. */
  readonly isPresent: boolean;
  readonly circuits: Assessment['circuits'];
  readonly quantities: NonNullable<Assessment['quantities']>;
}

/** What has to be asked for them: every variant that there is. */
export const designsReported = (site: Site): readonly string[] => variantsOf(site).map(({ id }) => id);

export const designsOfReport = (site: Site, results: readonly DesignResults[]): readonly ReportedDesign[] =>
  variantsOf(site).flatMap((variant): readonly ReportedDesign[] => {
    const found = results.find(({ design }) => design === variant.id);
    const own = designSite(site, variant.id);
    if (!found || !own) return [];
    return [
      {
        id: variant.id,
        name: variant.name,
        isPresent: holdsPresent(site, variant),
        circuits: found.circuits,
        quantities: found.quantities ?? quantitiesOf(own)
      }
    ];
  });
