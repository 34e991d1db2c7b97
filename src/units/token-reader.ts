import type { Token } from './lexer';

/** A place in a row of tokens. */
export class TokenReader {
  private position = 0;

  constructor(private readonly tokens: readonly Token[]) {}

  peek(ahead = 0): Token | undefined {
    return this.tokens[this.position + ahead];
  }

  advance(count = 1): void {
    this.position += count;
  }

  /** Steps over the next token and returns it if it is one of these signs. */
  takeSign(...signs: readonly string[]): string | undefined {
    const token = this.peek();
    if (token?.type !== 'sign' || !signs.includes(token.text)) return undefined;
    this.advance();
    return token.text;
  }
}
