/** What the command does, without a process around it: it writes to the streams that it is given and answers with the exit code. */
import { writeFileSync } from 'node:fs';
import { speakWhole } from '#i18n/whole';
import { createAssessor } from '#analysis/assess';
import { compareDesignsInSteps } from '#analysis/designs/compare-designs';
import type { DesignResults } from '#analysis/designs/results';
import { createMeans } from '#analysis/means';
import { readingsReportInSteps } from '#analysis/fault-finding/readings-report';
import type { Assessment } from '#analysis/results';
import { finish } from '#analysis/steps';
import { onlySection, reportJson, reportOf } from '#exchange/report';
import { designsReported } from '#exchange/report-designs';
import { reportCsv } from '#exchange/report-csv';
import { reportText } from '#exchange/report-text';
import type { Site } from '#plan/schema';
import { readArguments, type RequestReading } from './arguments';
import { fileOf } from './files';
import { netlistsOf } from './netlists';
import { openSites, printable, type OpenedSite } from './sites';

const BAD_INPUT = 2;

type Request = Extract<RequestReading, { ok: true }>['request'];
type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

interface AssessedSite extends OpenedSite {
  readonly assessment: Assessment;
}

interface Sink {
  write(content: string | Uint8Array): unknown;
}

interface Streams {
  readonly out: Sink;
  readonly err: Sink;
}

const refuse = ({ err }: Streams, ...sentences: readonly string[]): number => {
  err.write(`${sentences.join('\n')}\n`);
  return BAD_INPUT;
};

const hand = (streams: Streams, output: string | null, content: string | Uint8Array): number => {
  if (output === null) {
    streams.out.write(content);
    return 0;
  }
  try {
    writeFileSync(output, content);
    return 0;
  } catch (error) {
    return refuse(
      streams,
      `${printable(output)}: cannot be written (${(error as NodeJS.ErrnoException).code ?? '?'})`
    );
  }
};

/** Causes take a while: only a report that shows them reckons them. */
const visitsFor = (only: Asked<'report'>['only'], site: Site) =>
  only === null || only === 'readings' ? finish(readingsReportInSteps(site)) : [];

const designsFor = (only: Asked<'report'>['only'], site: Site): readonly DesignResults[] => {
  const designs = only === null || only === 'designs' ? designsReported(site) : [];
  return designs.length > 0
    ? finish(compareDesignsInSteps(site, { designs, pass: null }, createMeans()))
    : [];
};

const reportsOf = ({ format, only }: Asked<'report'>, sites: readonly AssessedSite[]): string => {
  const parts = sites.map(({ site, file, assessment }) => ({
    part: onlySection(reportOf(site, file, assessment, visitsFor(only, site), designsFor(only, site)), only),
    site
  }));
  if (format === 'csv') return reportCsv(parts.map(({ part }) => part));
  if (format === 'text') return parts.map(({ part, site }) => reportText(part, site.displayUnits)).join('\n');
  return parts.map(({ part }) => `${reportJson(part, parts.length === 1 ? 2 : 0)}\n`).join('');
};

/** Of geometry and counting alone: vehicles over hundreds of loops would take minutes that nobody waits for. */
const DRAWN: ReadonlySet<string> = new Set([
  'takeoff-csv',
  'takeoff-xlsx',
  'cutting-csv',
  'cutting-xlsx',
  'designs-csv',
  'designs-xlsx',
  'plan-svg',
  'plan-dxf'
] satisfies Asked<'file'>['file'][]);

const needsFigures = (request: Asked<'report' | 'file'>): boolean =>
  request.strict || request.kind === 'report' || !DRAWN.has(request.file);

const contentOf = async (
  request: Asked<'report' | 'file'>,
  sites: readonly AssessedSite[]
): ReturnType<typeof fileOf> => {
  if (request.kind === 'report') return { ok: true, content: reportsOf(request, sites) };
  const [{ assessment, ...opened }] = sites as readonly [AssessedSite];
  const made = await fileOf(request.file, opened, assessment);
  return made.ok ? made : { ok: false, problem: `${printable(opened.file)}: ${made.problem}` };
};

/** `words`: the command line behind the command. All or nothing: if one file is bad, nothing is printed or written. */
export async function runReport(words: readonly string[], streams: Streams): Promise<number> {
  const reading = readArguments(words);
  if (!reading.ok)
    return reading.isAsked ? hand(streams, null, `${reading.message}\n`) : refuse(streams, reading.message);
  const { request } = reading;
  speakWhole(request.language);
  const opened = openSites(request.files);
  if (!opened.ok) return refuse(streams, ...opened.problems);
  if (request.kind === 'netlist') {
    const sites = opened.sites.map(({ file, site }) => ({ file: printable(file), site }));
    const netlists = netlistsOf(sites, request.only);
    return netlists.ok ? hand(streams, request.output, netlists.text) : refuse(streams, ...netlists.problems);
  }
  const assessor = createAssessor();
  const sites = opened.sites.map((each): AssessedSite => ({
    ...each,
    assessment: assessor.assess(each.site, needsFigures(request) ? 'complete' : 'prepared')
  }));
  const made = await contentOf(request, sites);
  if (!made.ok) return refuse(streams, made.problem);
  const code = hand(streams, request.output, made.content);
  const isGrave = sites.some(({ assessment }) =>
    assessment.findings.some(({ severity }) => severity === 'problem')
  );
  return code === 0 && request.strict && isGrave ? 1 : code;
}
