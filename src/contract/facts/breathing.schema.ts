import type { BreathingRule } from '#domain/fact.ts';
import type { z } from 'zod';
import { choice } from './lists.schema.ts';

export const breathingRule = choice([
  'exhale through the hard part',
  'brief brace on heavy sets',
  'no straining at all',
]) satisfies z.ZodType<BreathingRule>;
