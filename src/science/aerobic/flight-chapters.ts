import type { Chapter } from '../chapter.ts';
import { AEROBIC_SESSIONS, WHOLE_PROGRAMMES } from './aerobic-sessions.table.ts';
import { CAPACITY_CHANGES } from './capacity-changes.table.ts';
import { beltKilometresPerHour, cappedSpeed, startSpeed } from './belt-settings.ts';
import { beltSettingChecks } from './bout-settings.checks.ts';
import { capacityIndex, capacityRatio } from './capacity-index.ts';
import { capacityChecks, normChecks } from './capacity.checks.ts';
import { expectedMaximumDeSouza, expectedMaximumMyers } from './expected-maximum.ts';
import {
  halfSinePeak,
  loadingCycles,
  runningPeakOnEarth,
  runningPeakUnderHarness,
  walkingPeakUnderHarness,
} from './ground-force.ts';
import {
  fixedPulleyLine,
  rollingTrolleyLine,
  runningCostFactor,
  sameEffortSpeed,
  sdOfRunningCostFactor,
  sdOfWalkingCostFactor,
  uptakeUnderHarness,
  walkingCostFactor,
} from './harness-cost.ts';
import { effectiveLoad, harnessPull, loadForSpeed, loadOfPull, setLoad, timeForSpeed } from './harness-limits.ts';
import { LOAD_PROGRESSION, SPEED_CAPS } from './harness-rules.table.ts';
import { sessionUnderHarness } from './session-under-harness.ts';
import { costFactorChecks, groundForceChecks, sessionChecks } from './harness.checks.ts';
import { UPTAKE_NORMS } from './uptake-norms.table.ts';
import { uptakeOfPercentile, uptakePercentile } from './uptake-percentile.ts';
import { shownTable } from '../sourced-table.ts';
import { studiedSessionChecks } from './aerobic-sessions.checks.ts';

/** What changes weightless: harness, ground force, capacity; and how it compares with other people. */
export const FLIGHT_CHAPTERS: readonly Chapter[] = [
  {
    heading: 'Cost of walking and running under a harness',
    says: 'A share of the net cost in 1 g; measured under support on Earth, never yet weightless.',
    formulas: [
      runningCostFactor,
      sdOfRunningCostFactor,
      walkingCostFactor,
      sdOfWalkingCostFactor,
      rollingTrolleyLine,
      fixedPulleyLine,
      uptakeUnderHarness,
      sameEffortSpeed,
      loadForSpeed,
      timeForSpeed,
      effectiveLoad,
      setLoad,
      harnessPull,
      loadOfPull,
    ],
    checks: costFactorChecks,
  },
  {
    heading: 'A session under a harness',
    says: 'The load is raised before the speed; in the first weeks nobody runs faster than on the ground.',
    formulas: [cappedSpeed, startSpeed, beltKilometresPerHour],
    methods: [sessionUnderHarness],
    tables: [shownTable(SPEED_CAPS), shownTable(LOAD_PROGRESSION)],
    checks: [...sessionChecks, ...beltSettingChecks],
  },
  {
    heading: 'Ground force under a harness',
    says: 'Peaks in body weights, a cross-check from the mean load, and how often each leg is loaded.',
    formulas: [runningPeakOnEarth, runningPeakUnderHarness, walkingPeakUnderHarness, halfSinePeak, loadingCycles],
    checks: groundForceChecks,
  },
  {
    heading: 'Sessions that were studied',
    says: 'Intervals and continuous work of flight and bed rest, each with how far it was seen.',
    tables: [shownTable(AEROBIC_SESSIONS), shownTable(WHOLE_PROGRAMMES)],
    checks: studiedSessionChecks,
  },
  {
    heading: 'Aerobic capacity in and after flight',
    says: 'A submaximal test against itself before flight, and what was published.',
    methods: [capacityIndex, capacityRatio],
    tables: [shownTable(CAPACITY_CHANGES)],
    checks: capacityChecks,
  },
  {
    heading: 'Among other people',
    says: 'A description, no target: crews are not drawn from these populations.',
    formulas: [expectedMaximumMyers, expectedMaximumDeSouza],
    methods: [uptakePercentile, uptakeOfPercentile],
    tables: [shownTable(UPTAKE_NORMS)],
    checks: normChecks,
  },
];
