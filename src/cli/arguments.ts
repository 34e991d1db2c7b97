/** The command line of the report, read into a plain request or a sentence about what is wrong with it. */
import { LANGUAGES, type Language } from '#i18n/message';
import type { ExportKind } from '#exchange/files/exported';
import { SECTIONS, type Section } from '#exchange/report';
import { FORMATS, PAPERS, TABLES, wantedOf, type Format } from './formats';

interface Common {
  readonly files: readonly string[];
  readonly strict: boolean;
  /** Of findings, names and tables, and of decimal signs in text; the report's headings, field names and codes are always English. */
  readonly language: Language;
  /** Path to write to; null for the standard output. */
  readonly output: string | null;
}

interface ReportRequest extends Common {
  readonly kind: 'report';
  readonly format: 'json' | 'text' | 'csv';
  readonly only: Section | null;
}

interface NetlistRequest extends Common {
  readonly kind: 'netlist';
  /** Id of a circuit. */
  readonly only: string | null;
}

/** The very file that the page makes. */
interface FileRequest extends Common {
  readonly kind: 'file';
  readonly file: Exclude<ExportKind, 'plan-png'>;
}

type Request = ReportRequest | NetlistRequest | FileRequest;

const USAGE = `usage: npm run --silent report -- FILE… [--format ${FORMATS.join('|')}] [--only SECTION] [--output FILE] [--strict] [--language ${LANGUAGES.join('|')}]
sections: ${SECTIONS.join(', ')}; tables with --format csv or xlsx: ${TABLES.join(', ')}; papers with --format pdf: ${PAPERS.join(', ')}; with --format netlist: the id of a circuit
in CSV a table goes before the section of its name: "readings" is then what should be read, "measured" what was; as JSON and text "readings" is what was read, circuit by circuit and visit by visit, with its causes; in the same way "designs" is a table of what differs between the kept designs, and as JSON and text what each of them comes to`;

export type RequestReading =
  | { readonly ok: true; readonly request: Request }
  /** `isAsked`: somebody asked how this is used, and nothing is wrong. */
  | { readonly ok: false; readonly message: string; readonly isAsked?: true };

const isOneOf = <T extends string>(allowed: readonly T[], value: string | undefined): value is T =>
  (allowed as readonly (string | undefined)[]).includes(value);

const refused = (message: string): RequestReading => ({ ok: false, message: `${message}\n${USAGE}` });
const expected = (option: string, allowed: readonly string[], found: string | undefined): RequestReading =>
  refused(`${option} expects one of ${allowed.join(', ')}, found ${found ?? 'nothing'}`);

/** What was asked for and what of it goes together. */
function requestOf(common: Common, format: Format, only: string | null): RequestReading {
  if (format === 'netlist')
    return common.strict
      ? refused('--strict looks at findings, of which a netlist has none')
      : { ok: true, request: { kind: 'netlist', ...common, only } };
  const wanted = wantedOf(format, only);
  if (wanted.kind === 'refused')
    return wanted.allowed.length > 0
      ? expected('--only', wanted.allowed, only ?? undefined)
      : refused(`--only says nothing with --format ${format}, which is made as a whole`);
  if (wanted.kind === 'file')
    return common.files.length > 1
      ? refused(
          `this makes one file of one site, found ${common.files.length} files: run it for each of them`
        )
      : { ok: true, request: { kind: 'file', ...common, file: wanted.file } };
  // what is no file is one of these, with a section or none
  return {
    ok: true,
    request: {
      kind: 'report',
      ...common,
      format: format as ReportRequest['format'],
      only: only as Section | null
    }
  };
}

export const readArguments = (words: readonly string[]): RequestReading => {
  if (words.some((word) => word === '--help' || word === '-h'))
    return { ok: false, message: USAGE, isAsked: true };
  const files: string[] = [];
  let format: Format = 'json';
  let only: string | null = null;
  let output: string | null = null;
  let strict = false;
  let language: Language = 'en';
  for (let k = 0; k < words.length; k++) {
    const [word, inline] = split(words[k]!);
    if (word === '--strict' && inline === null) strict = true;
    else if (isOneOf(['--format', '--only', '--language', '--output'], word)) {
      const value: string | undefined = inline ?? words[++k];
      if (word === '--only') {
        if (value === undefined) return expected(word, SECTIONS, value);
        only = value;
      } else if (word === '--output') {
        if (value === undefined || value === '') return refused('--output expects the name of a file');
        output = value;
      } else if (word === '--language') {
        if (!isOneOf(LANGUAGES, value)) return expected(word, LANGUAGES, value);
        language = value;
      } else if (isOneOf(FORMATS, value)) format = value;
      else return expected(word, FORMATS, value);
    } else if (word.startsWith('-') && word !== '-') return refused(`unknown option ${words[k]!}`);
    else files.push(words[k]!);
  }
  if (files.length === 0) return refused('no file given');
  // what may stand behind --only depends on the format, which may stand after it
  return requestOf({ files, strict, language, output }, format, only);
};

/** `--option=value` into its two halves. */
const split = (word: string): readonly [string, string | null] => {
  const at = word.startsWith('--') ? word.indexOf('=') : -1;
  return at < 0 ? [word, null] : [word.slice(0, at), word.slice(at + 1)];
};
