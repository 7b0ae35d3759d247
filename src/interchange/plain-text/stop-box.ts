import type { BreathingRule } from '#domain/fact.ts';

/** Stands once on every card and every week's text (common practice). */
export const STOP_BOX = [
  'STOP for chest discomfort, faintness, numbness or weakness, sudden, spreading or night pain, or pain of 7 or more:',
  'stop; tell a crewmate; use the on-board medical procedure; report at the next contact.',
  'Pain 5-6: stop that exercise. Pain 3-4: hold the load.',
] as const;

export const breathingLine = (rule: BreathingRule): string => {
  switch (rule) {
    case 'exhale through the hard part':
      return 'Breathing: exhale through the hard part.';
    case 'brief brace on heavy sets':
      return 'Breathing: a brief brace on heavy sets only, else exhale through the hard part.';
    case 'no straining at all':
      return 'Breathing: no straining at all; breathe throughout.';
  }
};
