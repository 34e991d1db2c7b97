import { parse as parseSvelte } from 'svelte/compiler';
import { parseSync } from 'vite';

/** One mention of another module. `specifier` is undefined where the name is computed and so cannot be checked. */
export interface Import {
  readonly specifier: string | undefined;
  readonly typesOnly: boolean;
}

type Tree = Record<string, unknown>;

function isTree(value: unknown): value is Tree {
  return typeof value === 'object' && value !== null;
}

function parse(path: string, text: string): Tree {
  if (path.endsWith('.svelte')) return parseSvelte(text, { modern: true }) as unknown as Tree;
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors.map(({ message }) => message).join('; ')}`);
  return program as unknown as Tree;
}

/** The text of a string that is fixed when it is written, whatever quotes it has. */
function fixedText(node: unknown): string | undefined {
  if (!isTree(node)) return undefined;
  if (node['type'] === 'Literal' && typeof node['value'] === 'string') return node['value'];
  if (node['type'] === 'TSLiteralType') return fixedText(node['literal']);
  const quasis = node['quasis'];
  if (node['type'] === 'TemplateLiteral' && Array.isArray(quasis) && quasis.length === 1) {
    const [only] = quasis as { value: { cooked: string } }[];
    return only?.value.cooked;
  }
  return undefined;
}

function areTypesOnly(node: Tree, kind: 'importKind' | 'exportKind'): boolean {
  if (node[kind] === 'type') return true;
  const specifiers = node['specifiers'];
  if (!Array.isArray(specifiers) || specifiers.length === 0) return false;
  return specifiers.every((specifier) => isTree(specifier) && specifier[kind] === 'type');
}

/** import.meta, or a member of it such as import.meta.url and import.meta.glob. */
function isImportMeta(node: unknown, member?: string): boolean {
  if (!isTree(node)) return false;
  if (member === undefined) return node['type'] === 'MetaProperty';
  const property = node['property'];
  return (
    node['type'] === 'MemberExpression' &&
    isImportMeta(node['object']) &&
    isTree(property) &&
    property['name'] === member
  );
}

function globImports(argument: unknown): Import[] {
  const patterns =
    isTree(argument) && Array.isArray(argument['elements']) ? argument['elements'] : [argument];
  return patterns.map((pattern) => ({ specifier: fixedText(pattern), typesOnly: false }));
}

function importsOfCall(node: Tree): Import[] {
  const callee = node['callee'];
  const [first, second] = (node['arguments'] ?? []) as unknown[];
  if (node['type'] === 'NewExpression') {
    const isModuleAddress = isTree(callee) && callee['name'] === 'URL' && isImportMeta(second, 'url');
    return isModuleAddress ? [{ specifier: fixedText(first), typesOnly: false }] : [];
  }
  if (isImportMeta(callee, 'glob')) return globImports(first);
  if (isTree(callee) && callee['type'] === 'Identifier' && callee['name'] === 'require') {
    return [{ specifier: fixedText(first), typesOnly: false }];
  }
  return [];
}

function importsOfNode(node: Tree): Import[] {
  switch (node['type']) {
    case 'ImportDeclaration':
      return [{ specifier: fixedText(node['source']), typesOnly: areTypesOnly(node, 'importKind') }];
    case 'ExportNamedDeclaration':
      if (!isTree(node['source'])) return [];
      return [{ specifier: fixedText(node['source']), typesOnly: areTypesOnly(node, 'exportKind') }];
    case 'ExportAllDeclaration':
      return [{ specifier: fixedText(node['source']), typesOnly: node['exportKind'] === 'type' }];
    case 'ImportExpression':
      return [{ specifier: fixedText(node['source']), typesOnly: false }];
    case 'TSImportType':
      return [{ specifier: fixedText(node['source'] ?? node['argument']), typesOnly: true }];
    case 'TSExternalModuleReference':
      return [{ specifier: fixedText(node['expression']), typesOnly: false }];
    case 'CallExpression':
    case 'NewExpression':
      return importsOfCall(node);
    default:
      return [];
  }
}

/**
 * Every module that a source text names: static, dynamic and type imports, re-exports, `require`, `import.meta.glob` and
 * `new URL(…, import.meta.url)`. `path` tells by its ending how to read the text.
 * @throws where the text cannot be parsed
 */
export function importsOf(path: string, text: string): Import[] {
  const found: Import[] = [];
  const visit = (value: unknown): void => {
    if (!isTree(value)) return;
    if (!Array.isArray(value)) found.push(...importsOfNode(value));
    Object.values(value).forEach(visit);
  };
  visit(parse(path, text));
  return found;
}
