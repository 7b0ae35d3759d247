import type { BreathingRule } from '#domain/fact.ts';
import { BREATHING, STOP_RULE } from '#domain/stop-rule.ts';
import { plainAscii } from './plain-ascii.ts';

/** Stands once in every week's text. */
export const STOP_BOX = [
  `STOP for ${STOP_RULE.signs}:`,
  `stop; ${STOP_RULE.thenDo}.`,
  plainAscii(STOP_RULE.lesserPain),
] as const;

export const breathingLine = (rule: BreathingRule): string => BREATHING[rule];
