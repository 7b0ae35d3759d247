import type { BringInPlan } from '#interchange/plan-bring-in.ts';

/** What would be recorded, what is refused, and what must be answered: everything at once. */
export const bringInLines = (fileName: string, { preview, problems, questions }: BringInPlan): readonly string[] => {
  const open = questions.filter(({ answer }) => answer === null);
  return [
    `${fileName}: ${preview.totals.facts} facts: ${preview.totals.newPeople} new people, ${preview.totals.missions} missions, ${preview.totals.measurements} measurements, ${preview.totals.tests} tests.`,
    ...problems.map(
      ({ kind, where, what, why, whatToDo }) =>
        `  ${kind === 'refused' ? 'Refused' : 'Odd'}, ${where}: ${what} ${why} ${whatToDo}`,
    ),
    ...preview.passedOver.map(({ where, what, why }) => `  Passed over, ${where}: ${what} ${why}`),
    ...open.flatMap(({ id, where, asks, because, choices, typed, suggested }) => [
      `  Question "${id}", ${where}: ${asks} ${because}`,
      ...choices.map(({ answer, says }) => `    "${answer}": ${says}${answer === suggested ? ' (likely)' : ''}`),
      ...(typed === null ? [] : [`    or ${typed}`]),
    ]),
    ...(open.length > 0
      ? [
          `  Answer in a JSON file given with --answers: {${open.map(({ id }) => `${JSON.stringify(id)}: "…"`).join(', ')}}`,
        ]
      : []),
  ];
};
