import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { codesIn, spokenTooEarly, strayWordsIn, strayWordsInComponent } from '../support/stray-words';

const ROOMS = ['units', 'plan', 'analysis', 'editor', 'storage', 'workers', 'scenes', 'canvas', 'ui', 'app'];

/** Nobody reads these as language. */
const UNREAD: readonly (readonly [why: string, pattern: RegExp])[] = [
  ['the name of the program', /^Kerfline$/],
  ['keys in the storage', /^kerfline /],
  ['a state of a tool, for whoever looks for a fault', /^[a-z -]+: [a-z {}]+$|^\{\} (outline|box)$/],
  ['a key of what is kept, or of steps that become one', /^[a-z]+ \{\}( (of )?\{\})?$/],
  ['a unit', /^\{\} (in|ft|cm|m)$/],
  ['a piece of work that sizes are typed for', /^dimension offset$/],
  ['titles of publications', /^(NCHRP Report|AASHTO),? /],
  ['a formula', /frac\{|[_^]\{?\w/],
  ['the head of an XML file', /^<\?xml /],
  ['a style', /^var\(--|\{\}(px|mm)|^@page|^@media/],
  ['families of fonts', /sans-serif$/],
  ['places in the page', /^[a-z]+ > [a-z]+|\[role=/]
];

const files = ROOMS.flatMap((room) =>
  readdirSync(`src/${room}`, { recursive: true, encoding: 'utf8' }).map((name) => `src/${room}/${name}`)
)
  .filter((file) => /\.(ts|svelte)$/.test(file))
  .map((file) => ({ file, code: readFileSync(file, 'utf8') }));

/** Of a component. */
const scriptsOf = (code: string): string =>
  [...code.matchAll(/<script[^>]*>(.*?)<\/script>/gs)].map(([, script]) => script).join('\n');

describe('the search for stray words', () => {
  it.each([
    ['a text', "const a = 'Too many loops';"],
    ['a text with values', 'const a = `Lane ${n} of the ${m} lanes`;'],
    ['a word beside a value', 'const a = `Delete ${things}`;'],
    ['a member of an object', "const a = { label: 'Delete all loops' };"]
  ])('finds %s', (_, code) => {
    expect(strayWordsIn(code)).toHaveLength(1);
  });

  it.each([
    ['a comment', '// Too many loops\nconst a = 1;'],
    ['a type', "type A = 'too many loops';"],
    ['a mistake of ours', "throw new Error('too many loops');"],
    ['a key', "const a = t('loops.tooMany');"]
  ])('leaves %s alone', (_, code) => {
    expect(strayWordsIn(code)).toEqual([]);
  });

  it.each([
    ['text', '<p>Too many loops</p>'],
    ['one word', '<b>Loops</b>'],
    ['a label', '<button aria-label="Close"></button>'],
    ['an expression', "<p>{isFull ? 'Too many loops' : ''}</p>"],
    ['a script', "<script>const a = 'Too many loops';</script>"]
  ])('finds %s in a component', (_, code) => {
    expect(strayWordsInComponent(code)).toHaveLength(1);
  });

  it('leaves classes, units and keys of a component alone', () => {
    const code = '<p class="quiet field">{t("loops.tooMany")} <b>kHz</b></p><style>p { margin: 0 }</style>';
    expect(strayWordsInComponent(code)).toEqual([]);
  });
});

describe('whatever people read is a message', () => {
  it('in modules and in components', () => {
    const codes = new Set(
      files.flatMap(({ file, code }) => codesIn(file.endsWith('.ts') ? code : scriptsOf(code)))
    );
    const found = files.flatMap(({ file, code }) => {
      const words = (file.endsWith('.svelte') ? strayWordsInComponent : strayWordsIn)(code);
      return words
        .filter(({ text }) => !codes.has(text) && !UNREAD.some(([, pattern]) => pattern.test(text)))
        .map(({ line, text }) => `${file}:${line}: ${text}`);
    });
    expect(found).toEqual([]);
  }, 60_000);

  it('and is said when it is shown, not when a module is loaded', () => {
    expect(spokenTooEarly("const NAMES = [t('loops.one')];")).toHaveLength(1);
    expect(spokenTooEarly("const names = () => [t('loops.one')];")).toEqual([]);
    const found = files
      .filter(({ file }) => file.endsWith('.ts'))
      .flatMap(({ file, code }) => spokenTooEarly(code).map(({ line, text }) => `${file}:${line}: ${text}`));
    expect(found).toEqual([]);
  });
});
