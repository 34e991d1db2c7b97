/** Finds sentences that stand in the code instead of among the messages. */
import { parse, type AST } from 'svelte/compiler';
import ts from 'typescript';

export interface StrayWords {
  readonly line: number;
  readonly text: string;
}

/** Two words with a space between them, or a word beside a value. */
const SENTENCE = /(\p{L}{2,}[,;:.!?]?|\{\}) \p{L}{2,}|\p{L}{2,}[,;:.!?]? (\p{L}{2,}|\{\})/u;
/** One word that is longer than any symbol of a unit. */
const WORD = /\p{L}{4,}/u;
/** Attributes that people read or hear. */
const SPOKEN =
  /^(aria-label|aria-description|aria-roledescription|aria-valuetext|title|placeholder|alt|label)$/;

const lineOf = (text: string, at: number): number => text.slice(0, at).split('\n').length;

const textOf = (node: ts.Node): string | null => {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return null;
  return node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join('');
};

/** Functions whose answer depends on the language. */
const SPEAKS = /^(t|format|formatForEdit|typeset|fixed|figures|plain|listed|dateTime|timeOfDay)$/;

/** Questions to the page's style and structure. */
const ASKS = /^(closest|matches|matchMedia|MediaQuery|querySelector|querySelectorAll)$/;

const isQuery = (node: ts.Node): boolean => {
  if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) return false;
  const { expression } = node;
  return ASKS.test(ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText());
};

/** What a mistake of ours says, and what is no value at all. */
const isUnheard = (node: ts.Node): boolean =>
  ts.isThrowStatement(node) ||
  isQuery(node) ||
  ts.isLiteralTypeNode(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node);

/** In a module; comments are none of it. */
export function strayWordsIn(code: string): readonly StrayWords[] {
  const source = ts.createSourceFile('a.ts', code, ts.ScriptTarget.Latest, true);
  const found: StrayWords[] = [];
  const visit = (node: ts.Node): void => {
    if (isUnheard(node)) return;
    const text = textOf(node);
    if (text !== null && SENTENCE.test(text)) found.push({ line: lineOf(code, node.getStart()), text });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Messages and figures that are put into words when a module is loaded, before anybody chose a language. */
export function spokenTooEarly(code: string): readonly StrayWords[] {
  const source = ts.createSourceFile('a.ts', code, ts.ScriptTarget.Latest, true);
  const found: StrayWords[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    if (ts.isCallExpression(node) && SPEAKS.test(node.expression.getText()))
      found.push({ line: lineOf(code, node.getStart()), text: node.getText() });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Texts that are types, names of properties or members of a constant list: codes that one room hands to another. */
export function codesIn(code: string): readonly string[] {
  const source = ts.createSourceFile('a.ts', code, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) found.push(node.literal.text);
    if (ts.isPropertyAssignment(node) && ts.isStringLiteral(node.name)) found.push(node.name.text);
    if (
      ts.isAsExpression(node) &&
      node.type.getText() === 'const' &&
      ts.isArrayLiteralExpression(node.expression)
    )
      node.expression.elements.forEach((each) => {
        if (ts.isStringLiteral(each)) found.push(each.text);
      });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

type Node = { readonly type: string; readonly start: number; readonly end: number } & Record<string, unknown>;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** In a component: its script, the text of its markup, and the attributes that are read out. */
export function strayWordsInComponent(code: string): readonly StrayWords[] {
  const root: AST.Root = parse(code, { modern: true });
  const found: StrayWords[] = [];
  const note = (at: number, text: string): void => {
    found.push({ line: lineOf(code, at), text: text.trim() });
  };
  for (const script of [root.instance, root.module]) {
    if (!script) continue;
    const { start, end } = script.content as unknown as Node;
    const before = lineOf(code, start) - 1;
    for (const { line, text } of strayWordsIn(code.slice(start, end)))
      found.push({ line: line + before, text });
  }
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (isNode(value)) {
      if (value.type === 'Attribute' && !SPOKEN.test(String(value['name']))) {
        if (Array.isArray(value['value']))
          value['value'].filter((each) => isNode(each) && each.type !== 'Text').forEach(visit);
        else visit(value['value']);
        return;
      }
      if (value.type === 'Text' && WORD.test(String(value['data']))) note(value.start, String(value['data']));
      if (value.type === 'Literal' && typeof value['value'] === 'string' && SENTENCE.test(value['value']))
        note(value.start, value['value']);
      if (value.type === 'TemplateElement') {
        const { cooked } = value['value'] as { cooked: string };
        if (SENTENCE.test(cooked)) note(value.start, cooked);
      }
      Object.entries(value).forEach(([key, each]) => {
        if (key !== 'parent' && key !== 'metadata') visit(each);
      });
    }
  };
  visit(root.fragment);
  return found;
}
