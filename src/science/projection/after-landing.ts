/** After landing a deficit goes by halves: the law that bone, capacity and strength share, by the name the forecasts use. */
export { halfLifeBetween, partLeft as partLeftAfterLanding } from '../recovery/halving.ts';
