import { type Day, addDays } from '#units/day.ts';

/** Days from today on which the tool was taken up; what is older was brought in from paper on that day. */
const TAKEN_UP = -160;

export const dayTakenUp = (today: Day): Day => addDays(today, TAKEN_UP);

/** The day on which something of a day came into the log: that day, or the day on which paper was brought in. */
export const dayEntered = (happened: Day, today: Day): Day =>
  happened > dayTakenUp(today) ? happened : dayTakenUp(today);
