/** The headless report: the assessment as a plain document with the names that others rely on. */
import type { DesignResults } from '#analysis/designs/results';
import type { VisitReport } from '#analysis/fault-finding/readings-report';
import type { PassReadout } from '#analysis/passing/results';
import type { Assessment } from '#analysis/results';
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import { quantitiesOf } from '#analysis/takeoff/quantities';
import type { Site } from '#plan/schema';
import { cuttingOf, type ReportedCutting } from './report-cutting';
import { designsOfReport, type ReportedDesign } from './report-designs';
import { readingsOfReport, type ReportedVisit } from './report-readings';

export const SECTIONS = [
  'loops',
  'couplings',
  'circuits',
  'probes',
  'passes',
  'detectionHeights',
  'calls',
  'channels',
  'beats',
  'quantities',
  'cutting',
  'readings',
  'findings',
  'designs'
] as const;
export type Section = (typeof SECTIONS)[number];

/** With the name and the sign that the rest of the report has: a drop is negative. */
type ReportedPass = PassReadout & { readonly deltaLOverL: number };

/** What follows an edit on the page is there when a report is made; a site without traffic has no calls. */
type Whole<K extends Section & keyof Assessment> = { readonly [S in K]: NonNullable<Assessment[S]> };

export interface Report extends Whole<Exclude<Section, 'passes' | 'cutting' | 'readings' | 'designs'>> {
  readonly passes: readonly ReportedPass[];
  readonly cutting: ReportedCutting;
  /** By circuit and visit, the newest visit first. */
  readonly readings: readonly ReportedVisit[];
  /** Every kept variant, in the order of the file. */
  readonly designs: readonly ReportedDesign[];
  readonly site: string;
  readonly file: string;
}

/** `visits` and `designs`: those of this very site; one on which nothing was read has no visits, one without variants no designs. */
export const reportOf = (
  site: Site,
  file: string,
  assessment: Assessment,
  visits: readonly VisitReport[],
  designs: readonly DesignResults[] = []
): Report => ({
  site: site.name,
  file,
  loops: assessment.loops,
  couplings: assessment.couplings,
  circuits: assessment.circuits,
  probes: assessment.probes,
  passes: (assessment.passes ?? []).map((pass) => ({ ...pass, deltaLOverL: -pass.response })),
  detectionHeights: assessment.detectionHeights ?? [],
  calls: assessment.calls ?? [],
  channels: assessment.channels,
  beats: assessment.beats,
  quantities: assessment.quantities ?? quantitiesOf(site),
  cutting: cuttingOf(cuttingPlanOf(site), site.displayUnits),
  readings: readingsOfReport(site, visits),
  findings: assessment.findings,
  designs: designsOfReport(site, designs)
});

/** Site and file name, and the sections asked for. */
export type PartialReport = Pick<Report, 'site' | 'file'> & Partial<Pick<Report, Section>>;

export const onlySection = (report: Report, section: Section | null): PartialReport =>
  section === null ? report : { site: report.site, file: report.file, [section]: report[section] };

/** Infinities and NaN have no JSON: they become null, which a reader cannot take for a number. */
export const reportJson = (report: PartialReport, indent: number): string =>
  JSON.stringify(report, null, indent);
