/**
 * The headless report. All or nothing: if one file is bad, nothing is printed or written.
 * Exit 0; 1 with --strict where a finding is a problem; 2 for a bad file, a bad command line, or what cannot be made.
 */
import { runReport } from './run';

// not process.exit: a pipe may still be taking what was written
process.exitCode = await runReport(process.argv.slice(2), { out: process.stdout, err: process.stderr });
