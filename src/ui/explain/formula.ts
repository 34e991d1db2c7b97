/**
 * Formulas as text, read into a tree that is written as MathML. Names of one letter stand slanted, longer ones upright;
 * `frac{a}{b}`, `sqrt{a}`, `x_i`, `x_{DC}`, `x^2`. Throws a SyntaxError for a brace that has no partner.
 */
export type FormulaNode =
  | { readonly kind: 'name' | 'number' | 'operator'; readonly text: string }
  | { readonly kind: 'row'; readonly items: readonly FormulaNode[] }
  | { readonly kind: 'fraction'; readonly top: FormulaNode; readonly bottom: FormulaNode }
  | { readonly kind: 'root'; readonly of: FormulaNode }
  | {
      readonly kind: 'script';
      readonly base: FormulaNode;
      readonly below: FormulaNode | null;
      readonly above: FormulaNode | null;
    };

const TOKEN = /\s+|frac\{|sqrt\{|[\p{L}∂][\p{L}′']*|\d+(?:[.,]\d+)?|[_^{}]|./gu;

export function readFormula(text: string): FormulaNode {
  const tokens = [...text.matchAll(TOKEN)].map(([token]) => token).filter((token) => token.trim() !== '');
  let at = 0;

  function row(isInside: boolean): FormulaNode {
    const items: FormulaNode[] = [];
    while (at < tokens.length && tokens[at] !== '}') items.push(scripted());
    if (isInside) {
      if (tokens[at] !== '}') throw new SyntaxError(`a brace is not closed in “${text}”`);
      at += 1;
    } else if (at < tokens.length) throw new SyntaxError(`a brace too many in “${text}”`);
    return items.length === 1 ? items[0]! : { kind: 'row', items };
  }

  function scripted(): FormulaNode {
    const base = single();
    let below: FormulaNode | null = null;
    let above: FormulaNode | null = null;
    while (tokens[at] === '_' || tokens[at] === '^') {
      const isBelow = tokens[at++] === '_';
      const script = single();
      if (isBelow) below = script;
      else above = script;
    }
    return below || above ? { kind: 'script', base, below, above } : base;
  }

  function single(): FormulaNode {
    const token = tokens[at++];
    if (token === undefined) throw new SyntaxError(`“${text}” ends too early`);
    if (token === '{') return row(true);
    if (token === 'sqrt{') return { kind: 'root', of: row(true) };
    if (token === 'frac{') {
      const top = row(true);
      if (tokens[at++] !== '{') throw new SyntaxError(`a fraction without a denominator in “${text}”`);
      return { kind: 'fraction', top, bottom: row(true) };
    }
    if (/^\d/.test(token)) return { kind: 'number', text: token };
    return { kind: /^[\p{L}∂]/u.test(token) ? 'name' : 'operator', text: token };
  }

  return row(false);
}
