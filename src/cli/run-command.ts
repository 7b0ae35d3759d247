import { parseArgs } from 'node:util';
import { failed, type Command, type Given, type Outcome, type World } from './command.ts';
import { helpOf, overview } from './help.ts';

/** Finds the command, reads its options and runs it. Nothing is run on options that are not understood. */
export const runCommand = async (
  commands: readonly Command[],
  typed: readonly string[],
  world: World,
): Promise<Outcome> => {
  const [name, ...rest] = typed;
  if (name === undefined || name === 'help' || name === '--help') return help(commands, rest[0]);
  const command = commands.find((each) => each.name === name);
  if (!command) return failed(`There is no command "${name}".`, '', overview(commands));
  if (rest.includes('--help')) return { kind: 'done', says: helpOf(command) };
  const given = optionsOf(command, rest);
  if (typeof given === 'string') return failed(given, '', helpOf(command));
  const missing = command.options.filter((option) => option.needed && given[option.name] === undefined);
  if (missing.length > 0)
    return failed(`Missing: ${missing.map((option) => `--${option.name}`).join(', ')}.`, '', helpOf(command));
  return command.run(given, world);
};

const help = (commands: readonly Command[], name: string | undefined): Outcome => {
  const command = commands.find((each) => each.name === name);
  if (name !== undefined && !command) return failed(`There is no command "${name}".`, '', overview(commands));
  return { kind: 'done', says: command ? helpOf(command) : overview(commands) };
};

const optionsOf = ({ options }: Command, typed: readonly string[]): Given | string => {
  try {
    const { values } = parseArgs({
      args: [...typed],
      options: Object.fromEntries(
        options.map(({ name, value }) => [name, { type: value === null ? ('boolean' as const) : ('string' as const) }]),
      ),
    });
    return Object.fromEntries(
      Object.entries(values).map(([name, value]) => [name, typeof value === 'string' ? value : 'yes']),
    );
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
};
