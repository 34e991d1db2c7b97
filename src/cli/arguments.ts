/** The command line of the report, read into a plain request or a sentence about what is wrong with it. */
import { LANGUAGES, type Language } from '#i18n/message';
import { SECTIONS, type Section } from '#exchange/report';

const FORMATS = ['json', 'text', 'csv', 'netlist'] as const;
type Format = (typeof FORMATS)[number];

interface ReportRequest {
  readonly files: readonly string[];
  readonly format: Exclude<Format, 'netlist'>;
  readonly only: Section | null;
  readonly strict: boolean;
  /** Of findings and names, and of decimal signs in text; headings, field names and codes are always English. */
  readonly language: Language;
}

interface NetlistRequest {
  readonly files: readonly string[];
  readonly format: 'netlist';
  /** Id of a circuit. */
  readonly only: string | null;
  readonly strict: boolean;
  readonly language: Language;
}

type Request = ReportRequest | NetlistRequest;

const USAGE = `usage: npm run --silent report -- FILE… [--format ${FORMATS.join('|')}] [--only SECTION] [--strict] [--language ${LANGUAGES.join('|')}]
sections: ${SECTIONS.join(', ')}; with --format netlist: the id of a circuit`;

export type RequestReading =
  { readonly ok: true; readonly request: Request } | { readonly ok: false; readonly message: string };

const isOneOf = <T extends string>(allowed: readonly T[], value: string | undefined): value is T =>
  (allowed as readonly (string | undefined)[]).includes(value);

const refused = (message: string): RequestReading => ({ ok: false, message: `${message}\n${USAGE}` });
const expected = (option: string, allowed: readonly string[], found: string | undefined): RequestReading =>
  refused(`${option} expects one of ${allowed.join(', ')}, found ${found ?? 'nothing'}`);

export const readArguments = (words: readonly string[]): RequestReading => {
  const files: string[] = [];
  let format: Format = 'json';
  let only: string | null = null;
  let strict = false;
  let language: Language = 'en';
  for (let k = 0; k < words.length; k++) {
    const [word, inline] = split(words[k]!);
    if (word === '--strict' && inline === null) strict = true;
    else if (word === '--format' || word === '--only' || word === '--language') {
      const value: string | undefined = inline ?? words[++k];
      if (word === '--only') {
        if (value === undefined) return expected(word, SECTIONS, value);
        only = value;
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
  if (format === 'netlist')
    return strict
      ? refused('--strict looks at findings, of which a netlist has none')
      : { ok: true, request: { files, format, only, strict, language } };
  if (only !== null && !isOneOf(SECTIONS, only)) return expected('--only', SECTIONS, only);
  return { ok: true, request: { files, format, only, strict, language } };
};

/** `--option=value` into its two halves. */
const split = (word: string): readonly [string, string | null] => {
  const at = word.startsWith('--') ? word.indexOf('=') : -1;
  return at < 0 ? [word, null] : [word.slice(0, at), word.slice(at + 1)];
};
