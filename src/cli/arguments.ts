/** The command line of the report, read into a plain request or a sentence about what is wrong with it. */
import { SECTIONS, type Section } from '#exchange/report';

const FORMATS = ['json', 'text', 'csv'] as const;
type Format = (typeof FORMATS)[number];

interface Request {
  readonly files: readonly string[];
  readonly format: Format;
  readonly only: Section | null;
  readonly strict: boolean;
}

const USAGE = `usage: npm run --silent report -- FILE… [--format ${FORMATS.join('|')}] [--only SECTION] [--strict]
sections: ${SECTIONS.join(', ')}`;

export type RequestReading =
  { readonly ok: true; readonly request: Request } | { readonly ok: false; readonly message: string };

export const readArguments = (words: readonly string[]): RequestReading => {
  const files: string[] = [];
  let format: Format = 'json';
  let only: Section | null = null;
  let strict = false;
  const wrong = (message: string): RequestReading => ({ ok: false, message: `${message}\n${USAGE}` });
  for (let k = 0; k < words.length; k++) {
    const [word, inline] = split(words[k]!);
    if (word === '--strict' && inline === null) strict = true;
    else if (word === '--format' || word === '--only') {
      const value = inline ?? words[++k];
      const allowed: readonly string[] = word === '--format' ? FORMATS : SECTIONS;
      if (value === undefined || !allowed.includes(value))
        return wrong(`${word} expects one of ${allowed.join(', ')}, found ${value ?? 'nothing'}`);
      if (word === '--format') format = value as Format;
      else only = value as Section;
    } else if (word.startsWith('-') && word !== '-') return wrong(`unknown option ${words[k]!}`);
    else files.push(words[k]!);
  }
  if (files.length === 0) return wrong('no file given');
  return { ok: true, request: { files, format, only, strict } };
};

/** `--option=value` into its two halves. */
const split = (word: string): readonly [string, string | null] => {
  const at = word.startsWith('--') ? word.indexOf('=') : -1;
  return at < 0 ? [word, null] : [word.slice(0, at), word.slice(at + 1)];
};
