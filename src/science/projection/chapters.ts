import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { adherenceQuantile, adherenceSd, expectedAdherence } from './adherence.ts';
import { halfLifeBetween, partLeft } from '../recovery/halving.ts';
import { amplitudeOfChange, amplitudeOfStudies } from './amplitude.ts';
import { boneChange, boneChangeSd, densityAfterChange, measuredChangeSd, rateStandardError } from './bone-change.ts';
import { boneRatePosterior } from './bone-rate.ts';
import { boneChecks, boneCourseChecks, landingChecks, scoreChecks } from './bone.checks.ts';
import { boneCourse, boneCourseSaturating, oxygenUptakeCourse, strengthCourse } from './course.ts';
import { amplitudeAtDose, amplitudeSdAtDose, boneRateAtDose, boneRateSdAtDose, effectiveDose } from './dose.ts';
import { forecast } from './forecast.ts';
import { jointProjection } from './joint-projection.ts';
import { jointChecks } from './joint.checks.ts';
import { valueAtLanding } from './landing.ts';
import { chanceUnder, chanceUnderLine } from './line.ts';
import { whatWasNotMeasured } from './not-measured.ts';
import { adherenceChecks, amplitudeChecks, courseChecks, filterChecks, predictionChecks } from './person.checks.ts';
import { expectedLogValue, logRatioVariance, logValueVariance, projectedValue, valueAtQuantile } from './prediction.ts';
import { BONE_QUANTITIES, LOG_QUANTITIES, OXYGEN_UPTAKE_CHANGES } from './quantities.table.ts';
import { twoStateFilter } from './two-state.ts';

export const PROJECTION: Part = {
  heading: 'Forecasts',
  says: 'Where oxygen uptake, strength and bone may go in flight and after it, and how little of that is known.',
  chapters: [
    {
      heading: 'How a loss runs',
      says: 'Courses in flight, the same for everybody; only their size differs.',
      formulas: [oxygenUptakeCourse, strengthCourse, boneCourse, boneCourseSaturating],
      checks: [...courseChecks, ...boneCourseChecks],
    },
    {
      heading: 'How large a loss is',
      says: 'From published changes to one person nobody has measured yet, and what training holds off.',
      formulas: [
        amplitudeOfChange,
        effectiveDose,
        amplitudeAtDose,
        amplitudeSdAtDose,
        boneRateAtDose,
        boneRateSdAtDose,
      ],
      methods: [amplitudeOfStudies],
      tables: [shownTable(OXYGEN_UPTAKE_CHANGES), shownTable(LOG_QUANTITIES), shownTable(BONE_QUANTITIES)],
      checks: amplitudeChecks,
    },
    {
      heading: 'How much of the training will be done',
      says: 'A posterior for forecasts alone; what was done is shown as plain counts.',
      formulas: [expectedAdherence, adherenceSd],
      methods: [adherenceQuantile],
      checks: adherenceChecks,
    },
    {
      heading: 'What tests say of one person',
      says: 'Own value and own amplitude through tests, and the days ahead of them.',
      formulas: [expectedLogValue, logValueVariance, logRatioVariance, valueAtQuantile, chanceUnder],
      methods: [twoStateFilter, projectedValue, chanceUnderLine],
      checks: [...filterChecks, ...predictionChecks],
    },
    {
      heading: 'Bone of one person',
      says: 'Other people and earlier missions; scans exist only before and after.',
      formulas: [rateStandardError, boneChange, boneChangeSd, measuredChangeSd, densityAfterChange],
      methods: [boneRatePosterior],
      checks: [...boneChecks, ...scoreChecks],
    },
    {
      heading: 'After landing',
      says: 'What comes back, by halves.',
      formulas: [partLeft, halfLifeBetween],
      checks: landingChecks,
    },
    {
      heading: 'Everything unknown at once',
      says: 'Adherence, amplitude, drift, landing day and recovery together; first what was not measured.',
      methods: [valueAtLanding, jointProjection, whatWasNotMeasured, forecast],
      checks: jointChecks,
    },
  ],
};
