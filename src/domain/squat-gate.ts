/** What somebody who never squatted shows, step by step, before a bar is planned for them. In order. */
export const SQUAT_GATES = ['clearance gate', 'first squat gate', 'light load gate', 'bar gate', 'test gate'] as const;
export type SquatGateName = (typeof SQUAT_GATES)[number];

/** How it was seen. A film that is not enough shows nothing. */
export const WAYS_OF_WATCHING = ['in person', 'on film, enough', 'on film, not enough'] as const;
export type WayOfWatching = (typeof WAYS_OF_WATCHING)[number];

/** Whoever has not passed this one sees no bar. */
export const GATE_BEFORE_BAR: SquatGateName = 'light load gate';
/** Until it is passed, a bar weighs no more than half of the body. */
export const GATE_BEFORE_STEPS: SquatGateName = 'bar gate';
