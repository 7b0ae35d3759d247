import { printedRows, type Check } from '../check.ts';
import { COUNTED_BY_HAND, RECOMPUTED } from '../sources.ts';
import { beltKilometresPerHour, cappedSpeed, startSpeed } from './belt-settings.ts';
import { highestBeat, lowestBeat, rateOfGreatest, uptakeOfGreatest } from './bout-targets.ts';
import {
  powerAtRate,
  powerAtUptake,
  speedAtRate,
  speedAtUptake,
  speedOfStageReserve,
  speedOfStageUptake,
} from './own-settings.ts';
import { DOUBLES } from './read-estimate.ts';

export const boutTargetChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [[uptakeOfGreatest, [0.75, 42], 31.5]]),
  ...printedRows(COUNTED_BY_HAND, 1e-9, DOUBLES, [
    [rateOfGreatest, [0.9, 180], 162],
    // 55 + 0.9 · (176.5 − 55) is 164.35: one target, five beats either way.
    [lowestBeat, [164.35, 164.35], 159.35],
    [highestBeat, [164.35, 164.35, 176.5], 169.35],
    [highestBeat, [174, 174, 176.5], 176.5],
    // A band of its own that is wide enough stays as it is.
    [lowestBeat, [120, 140], 120],
    [highestBeat, [120, 140, 176.5], 140],
  ]),
];

export const ownSettingChecks: readonly Check[] = [
  // The handbook's own line for 80 kg, 7 + 10.8 / 80 · P, read backwards as in its table.
  ...printedRows(RECOMPUTED, 1e-4, 'printed to a ten-thousandth of a watt', [
    [powerAtUptake, [31.5, 7, 0.135], 181.4815],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [speedAtUptake, [35.5, 3.5, 0.2], 160],
    [speedOfStageUptake, [160, 35.5, 35.5], 160],
  ]),
  ...printedRows(COUNTED_BY_HAND, 1e-9, DOUBLES, [
    [powerAtRate, [146, 80, 0.44], 150],
    [speedAtRate, [150, 30, 0.75], 160],
    [speedOfStageUptake, [160, 27.5, 35.5], 120],
    [speedOfStageReserve, [150, 0.8, 0.6], 200],
  ]),
];

export const beltSettingChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-4, 'printed to a ten-thousandth', [[beltKilometresPerHour, [208.0624], 12.4837]]),
  ...printedRows(COUNTED_BY_HAND, 1e-9, DOUBLES, [
    [cappedSpeed, [1.15, 160], 184],
    [startSpeed, [208.0624, 184], 184],
    [startSpeed, [150, 184], 150],
  ]),
];
