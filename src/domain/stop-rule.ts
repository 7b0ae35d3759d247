import type { BreathingRule } from './fact.ts';

/** What stops the session, in every text that a person trains from (common practice; the physician may set stricter limits). */
export const STOP_RULE = {
  signs:
    'chest discomfort, a racing or uneven pulse, dizziness or faintness, a numb hand or foot, weakness, sudden, spreading or night pain, or pain of 7 or more',
  thenDo: 'tell a crewmate or whoever supervises; use the medical procedure of the place; report at the next contact',
  lesserPain: 'Pain 5–6: stop that exercise. Pain 3–4: hold the load.',
} as const;

/** How to breathe, as the physician set it for this person. */
export const BREATHING: Readonly<Record<BreathingRule, string>> = {
  'exhale through the hard part': 'Breathe out through the hard part.',
  'brief brace on heavy sets': 'A brief brace on heavy sets only; else breathe out through the hard part.',
  'no straining at all': 'No straining at all: breathe throughout.',
};
