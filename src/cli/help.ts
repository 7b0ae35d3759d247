import type { Command, Option } from './command.ts';

const PROGRAM = 'npm run ballast --';

const column = (text: string, width: number): string => text.padEnd(width);

export const overview = (commands: readonly Command[]): string => {
  const width = Math.max(...commands.map(({ name }) => name.length)) + 2;
  return [
    `Usage: ${PROGRAM} COMMAND [OPTIONS]`,
    '',
    ...commands.map(({ name, summary }) => `  ${column(name, width)}${summary}`),
    '',
    `"${PROGRAM} help COMMAND" tells its options.`,
  ].join('\n');
};

export const helpOf = ({ name, summary, options }: Command): string => {
  const shown = options.map((option) => ({ option, text: usageOf(option) }));
  const width = Math.max(0, ...shown.map(({ text }) => text.length)) + 2;
  const needed = options.filter((option) => option.needed).map(usageOf);
  return [
    `Usage: ${[PROGRAM, name, ...needed, ...(needed.length < options.length ? ['[OPTIONS]'] : [])].join(' ')}`,
    '',
    summary,
    '',
    ...shown.map(({ option, text }) => `  ${column(text, width)}${option.help}`),
  ].join('\n');
};

const usageOf = ({ name, value }: Option): string => (value === null ? `--${name}` : `--${name} ${value}`);
