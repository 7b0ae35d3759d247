import { Unreadable } from './problem.ts';
import { tokensOf, type Token, type TokenKind } from './token.ts';

/** Walks along a line of shorthand, and stops with a sentence where it cannot go on. */
export class TokenReader {
  readonly #tokens: readonly Token[];
  readonly #end: number;
  #place = 0;

  constructor(line: string) {
    this.#tokens = tokensOf(line);
    this.#end = line.length;
  }

  get done(): boolean {
    return this.#place >= this.#tokens.length;
  }

  get place(): number {
    return this.#place;
  }

  back(place: number): void {
    this.#place = place;
  }

  peek(ahead = 0): Token | null {
    return this.#tokens[this.#place + ahead] ?? null;
  }

  is(kind: TokenKind, text?: string, ahead = 0): boolean {
    const token = this.peek(ahead);
    return token?.kind === kind && (text === undefined || token.text === text);
  }

  /** Takes the next token if it is of a kind, one of these words where words are given. */
  take(kind: TokenKind, ...texts: readonly string[]): Token | null {
    const token = this.peek();
    if (!token || token.kind !== kind || (texts.length > 0 && !texts.includes(token.text))) return null;
    this.#place += 1;
    return token;
  }

  need(kind: TokenKind, says: string): Token {
    return this.take(kind) ?? this.fail(says);
  }

  number(says: string): number {
    return Number(this.need('number', says).text);
  }

  /** Stops at the next token, or at the end of the line. */
  fail(says: string): never {
    const token = this.peek();
    throw new Unreadable({
      from: token?.from ?? this.#end,
      to: token?.to ?? this.#end,
      says: token ? `“${token.text}” is not understood here: ${says}` : `the line stops too early: ${says}`,
    });
  }
}
