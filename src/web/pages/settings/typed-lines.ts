/** A text of several lines as a list: without empty lines and blanks at their ends. */
export const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** Spellings, one a line or with commas between them, each once. */
export const spellingsOf = (text: string): readonly string[] => [...new Set(linesOf(text.replaceAll(',', '\n')))];
