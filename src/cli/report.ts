/**
 * The headless report. All or nothing: if one file is bad, nothing goes to stdout.
 * Exit 0; 1 with --strict where a finding is a problem; 2 for a bad file or a bad command line.
 */
import { readFileSync } from 'node:fs';
import { speakWhole } from '#i18n/whole';
import { createAssessor } from '#analysis/assess';
import { onlySection, reportJson, reportOf, type Report } from '#exchange/report';
import { reportCsv } from '#exchange/report-csv';
import { reportText } from '#exchange/report-text';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { readArguments } from './arguments';
import { netlistsOf } from './netlists';

const BAD_INPUT = 2;

const printable = (text: string): string => text.replace(/\p{Cc}/gu, '?');

const open = (file: string): Site | readonly string[] => {
  let bytes: Buffer;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why =
      code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'is a folder' : 'cannot be read';
    return [`${printable(file)}: ${why}`];
  }
  const reading = readSite(bytes.toString('utf8').replace(/^\uFEFF/, ''));
  if (reading.ok) return reading.site;
  return reading.problems.map(({ message }) => `${printable(file)}: ${message}`);
};

const main = (): number => {
  const reading = readArguments(process.argv.slice(2));
  if (!reading.ok) {
    process.stderr.write(`${reading.message}\n`);
    return BAD_INPUT;
  }
  const { request } = reading;
  const { files, strict, language } = request;
  speakWhole(language);
  const opened = files.map((file) => ({ file, content: open(file) }));
  const problems = opened.flatMap(({ content }) => ('format' in content ? [] : content));
  if (problems.length > 0) {
    process.stderr.write(`${problems.join('\n')}\n`);
    return BAD_INPUT;
  }
  if (request.format === 'netlist') {
    const sites = opened.flatMap(({ file, content }) =>
      'format' in content ? [{ file: printable(file), site: content }] : []
    );
    const netlists = netlistsOf(sites, request.only);
    if (netlists.ok) process.stdout.write(netlists.text);
    else process.stderr.write(`${netlists.problems.join('\n')}\n`);
    return netlists.ok ? 0 : BAD_INPUT;
  }
  const { format, only } = request;
  const assessor = createAssessor();
  const reports: { readonly report: Report; readonly site: Site }[] = opened.flatMap(({ file, content }) =>
    'format' in content
      ? [{ report: reportOf(content, file, assessor.assess(content, 'complete')), site: content }]
      : []
  );
  const parts = reports.map(({ report, site }) => ({ part: onlySection(report, only), site }));
  if (format === 'csv') process.stdout.write(reportCsv(parts.map(({ part }) => part)));
  else if (format === 'text')
    process.stdout.write(parts.map(({ part, site }) => reportText(part, site.displayUnits)).join('\n'));
  else
    process.stdout.write(
      parts.map(({ part }) => `${reportJson(part, parts.length === 1 ? 2 : 0)}\n`).join('')
    );
  const grave = reports.some(({ report }) => report.findings.some(({ severity }) => severity === 'problem'));
  return strict && grave ? 1 : 0;
};

// not process.exit: a pipe may still be taking what was written
process.exitCode = main();
