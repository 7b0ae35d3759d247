import type { Command } from './command.ts';
import { bringInCommand } from './commands/bring-in.ts';
import { card } from './commands/card.ts';
import { firstWeek } from './commands/first-week.ts';
import { issue } from './commands/issue.ts';
import { backup, check, exportAll, restore } from './commands/keeping.ts';
import { wholeRoad } from './commands/whole-road.ts';

export const COMMANDS: readonly Command[] = [
  firstWeek,
  wholeRoad,
  bringInCommand,
  issue,
  card,
  backup,
  restore,
  check,
  exportAll,
];
