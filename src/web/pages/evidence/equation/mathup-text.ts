import { casesIn, type Cases } from './equation-cases.ts';
import { tokensOf, type Token } from './equation-tokens.ts';

/**
 * Readable equations as the typesetter wants them: every name quoted, every fraction, script and root grouped, so that
 * nothing is left to its guessing. In "w · 36 / (37 − n)" all that stands before the stroke is the numerator.
 */

const OPENING = '{:';
const CLOSING = ':}';
const THIN_SPACE = '"\u2009"';
const grouped = (text: string): string => `${OPENING}${text}${CLOSING}`;

const BRACKETS: Readonly<Record<string, string>> = { '(': '(', '[': '[', '{': '\\{', '⌊': '⌊', '⌈': '⌈' };
const CLOSED: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '\\}', '⌊': '⌋', '⌈': '⌉' };
const OPERATORS: Readonly<Record<string, string>> = {
  '-': '−',
  '*': '·',
  '->': '→',
  '<=': '≤',
  '>=': '≥',
  '!=': '≠',
};
const BIG: Readonly<Record<string, string>> = { sum: 'sum', '∑': 'sum', prod: 'prod', '∏': 'prod' };
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/** An equation of the textbook in the notation of mathup. */
export const mathupText = (equation: string): string => {
  const tokens = tokensOf(equation);
  const cases = casesIn(tokens);
  return cases ? braced(cases) : new Setting(tokens).row();
};

/** The lines of a choice behind a brace. */
const braced = ({ left, lines }: Cases): string => {
  const set = lines.map(
    ({ value, when }) => `${grouped(new Setting(value).row())}, ${grouped(new Setting(when).row())}`,
  );
  return `${new Setting(left).row()} {${set.join('; ')}${CLOSING}`;
};

/** One reading of a list of tokens. */
class Setting {
  readonly #tokens: readonly Token[];
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  /** Terms and what joins them, up to a closing bracket. In a script a fraction stays on one line. */
  row(inScript = false, until: string | null = null): string {
    const done: string[] = [];
    let term: string[] = [];
    for (let token = this.#next; token && !isEnd(token, until); token = this.#next) {
      if (token.text === '/' && !inScript && term.length > 0) {
        this.#at += 1;
        term = [`${numerator(term)}/${this.#denominator()}`];
      } else if (this.#endsTerm(token)) {
        this.#at += 1;
        done.push(...term, token.kind === 'prose' ? quoted(token) : operator(token));
        term = [];
      } else {
        const last = this.#tokens[this.#at - 1];
        if (term.length > 0 && last && needsSpace(last, token)) term.push(THIN_SPACE);
        term.push(this.#factor());
      }
    }
    return [...done, ...term].join(' ');
  }

  get #next(): Token | undefined {
    return this.#tokens[this.#at];
  }

  /** A sum, a relation or a word; but words over or under a stroke are a factor like any other. */
  #endsTerm(token: Token): boolean {
    if (token.kind === 'prose') return this.#tokens[this.#at + 1]?.text !== '/';
    return token.kind === 'operator' && !isFactor(token);
  }

  #denominator(): string {
    const factor = this.#next ? this.#factor() : '';
    return isBracketed(factor) ? factor : grouped(factor);
  }

  /** A number, name or bracket with all that hangs on it. */
  #factor(): string {
    const atom = this.#atom();
    const scripts = this.#scripts();
    if (atom === 'sum' || atom === 'prod') return `${atom}${scripts} ${this.#summed()}`;
    const opens = this.#next;
    const isCall = opens?.kind === 'open' && !opens.spaced && atom.startsWith('`');
    return `${atom}${scripts}${isCall ? this.#brackets() + this.#scripts() : ''}`;
  }

  /** A sum runs over the whole product behind it. */
  #summed(): string {
    const factors: string[] = [];
    for (let token = this.#next; token && !isEnd(token, null) && token.text !== '/'; token = this.#next) {
      if (this.#endsTerm(token)) break;
      factors.push(this.#factor());
    }
    return factors.join(' ');
  }

  #atom(): string {
    const token = this.#next;
    if (!token) return '';
    if (token.kind === 'open') return this.#brackets();
    this.#at += 1;
    if (token.text === '√' || token.text === 'sqrt') return `sqrt${this.#root()}`;
    if (token.text === '|') return this.#absolute();
    const big = BIG[token.text];
    if (big) return big;
    if (token.kind === 'name') return `\`${token.text}\``;
    if (token.kind === 'prose') return quoted(token);
    if (token.kind === 'raised' || token.kind === 'lowered') return grouped(plainDigits(token.text));
    return token.kind === 'number' ? token.text : operator(token);
  }

  #brackets(): string {
    const open = this.#next?.text ?? '(';
    this.#at += 1;
    const inside = this.row();
    if (this.#next?.kind === 'close') this.#at += 1;
    return `${BRACKETS[open] ?? open}${inside}${CLOSED[open] ?? ')'}`;
  }

  /** What stands between brackets that are not drawn: under a root, in a script. */
  #within(inScript: boolean): string {
    this.#at += 1;
    const inside = this.row(inScript);
    if (this.#next?.kind === 'close') this.#at += 1;
    return grouped(inside);
  }

  #root(): string {
    return this.#next?.kind === 'open' ? this.#within(false) : grouped(this.#factor());
  }

  #absolute(): string {
    const inside = this.row(false, '|');
    this.#at += 1;
    return `|:${inside}:|`;
  }

  #scripts(): string {
    const subscripts: string[] = [];
    const superscripts: string[] = [];
    for (let token = this.#next; token && !token.spaced; token = this.#next) {
      if (token.kind === 'prime') superscripts.push(token.text.replaceAll('′', "'"));
      else if (token.kind === 'raised') superscripts.push(plainDigits(token.text));
      else if (token.kind === 'lowered') subscripts.push(plainDigits(token.text));
      else if (token.kind !== 'script') break;
      this.#at += 1;
      if (token.kind === 'script') (token.text === '_' ? subscripts : superscripts).push(this.#script());
    }
    return script('_', subscripts, '\\,') + script('^', superscripts, ' ');
  }

  #script(): string {
    const token = this.#next;
    if (!token) return '';
    if (token.kind === 'open') return this.#within(true).slice(OPENING.length, -CLOSING.length);
    if (token.kind !== 'operator') return this.#letters();
    this.#at += 1;
    return `${operator(token)} ${this.#letters()}`;
  }

  /** "i,j" without a space is one subscript, and so is "10". */
  #letters(): string {
    const taken = [this.#atom()];
    const [comma, after] = [this.#next, this.#tokens[this.#at + 1]];
    if (comma?.text === ',' && !comma.spaced && after && !after.spaced) {
      this.#at += 1;
      taken.push('\\,', this.#letters());
    }
    return taken.join(' ');
  }
}

/** "0.5 n" and "ln x" run together without it; "s W" does not. */
const needsSpace = (last: Token, next: Token): boolean =>
  isFactor(last) || isFactor(next) ? false : last.kind === 'number' || isLong(last) || isLong(next);

const isLong = ({ kind, text }: Token): boolean => kind === 'name' && text.length > 1;

const script = (sign: string, texts: readonly string[], between: string): string =>
  texts.length === 0 ? '' : `${sign}${grouped(texts.join(` ${between} `))}`;

const isEnd = (token: Token, until: string | null): boolean => token.kind === 'close' || token.text === until;

/** What does not end a product. */
const isFactor = ({ text }: Token): boolean => '·×*√|∑∏'.includes(text);

const quoted = ({ text }: Token): string => `"${text}"`;

const operator = ({ text }: Token): string => {
  const known = OPERATORS[text] ?? text;
  return /^[,;/%!?:{}'"`\\#@.&~|]$/.test(known) ? `\\${known}` : known;
};

/** A numerator in brackets loses them over the stroke; every other is held together unseen. */
const numerator = (term: readonly string[]): string => {
  const [only, ...others] = term;
  return only !== undefined && others.length === 0 && isBracketed(only) ? only : grouped(term.join(' '));
};

/** Whether a bracket that opens a text closes at its very end. */
const isBracketed = (text: string): boolean => {
  if (!text.startsWith('(')) return false;
  let depth = 0;
  for (const [place, letter] of [...text].entries()) {
    if (letter === '(') depth += 1;
    if (letter === ')') depth -= 1;
    if (depth === 0) return place === text.length - 1;
  }
  return false;
};

const plainDigits = (text: string): string =>
  [...text]
    .map((letter) => {
      const digit = Math.max(RAISED.indexOf(letter), LOWERED.indexOf(letter));
      return digit >= 0 ? String(digit) : letter === '⁻' ? '− ' : '+ ';
    })
    .join('');
