import type { Instant } from '#domain/identity.ts';

/** What happens at a moment; it may put more on the agenda, never before itself. */
export interface Happening {
  readonly at: Instant;
  readonly happen: () => void;
}

export interface Agenda {
  readonly add: (happening: Happening) => void;
  /** Lets everything happen in order of time, and of what was added first, up to but not including a moment. */
  readonly runUntil: (end: Instant) => void;
}

export const agenda = (): Agenda => {
  const waiting: Happening[] = [];
  const add = (happening: Happening): void => {
    const after = waiting.findLastIndex((other) => other.at <= happening.at);
    waiting.splice(after + 1, 0, happening);
  };
  const runUntil = (end: Instant): void => {
    for (let next = waiting[0]; next && next.at < end; next = waiting[0]) {
      waiting.shift();
      next.happen();
    }
  };
  return { add, runUntil };
};
