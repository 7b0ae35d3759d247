import { dayFromIso, type Day } from '#units/day.ts';
import type { BringInAnswers } from '#contract/bring-in.ts';
import type { Known } from '#domain/known.ts';
import type { SignerId } from '#domain/identity.ts';
import { followProgramme } from '#actions/follow-programme.ts';
import { startEmpty } from '#actions/start-log.ts';
import { weekText } from '#interchange/plain-text/week-text.ts';
import { bringInAll } from '../bring-in-all.ts';
import { capacityLines } from '../capacity-lines.ts';
import {
  done,
  failed,
  needed,
  optional,
  type Command,
  type Given,
  type Keeping,
  type Outcome,
  type World,
} from '../command.ts';
import { personNamed } from '../find-by-name.ts';
import { issueNextDays } from '../issue-next-days.ts';
import { raiseLines } from '../raise-lines.ts';
import { readAnswers } from '../read-answers.ts';
import { roadLines } from '../road-lines.ts';
import { inOpening, problemLines, snapshotNow } from '../with-data.ts';

/** A new person, from a table of tests to the whole road and a first week, in memory. */
export const wholeRoad: Command = {
  name: 'whole-road',
  summary:
    'From tables of people, missions and tests to the whole road of one person and a signed first week, as text.',
  options: [
    needed('people', 'FILE', 'people: name, sex, birth date, body mass, mission'),
    needed('tests', 'FILE', 'tests: one a row, or one person a row'),
    optional('missions', 'FILE', 'missions: name, site, launch, landing'),
    needed('person', 'NAME', 'whose road'),
    needed('signer', 'NAME', 'who signs'),
    needed('today', 'YYYY-MM-DD', 'the day on which the road begins'),
    optional('answers', 'FILE', 'JSON with answers to what the files do not say'),
  ],
  run: async (given, world) => {
    const today = dayFromIso(given['today'] ?? '');
    if (today === null) return failed(`"${given['today']}" is no day such as 2027-03-01.`);
    const reading = await readAnswers(given['answers'], world);
    if (reading.kind === 'wrong') return failed(reading.says);
    return inOpening(await world.openInMemory(today), (keeping) =>
      runInMemory(given, world, keeping, { today, answers: reading.answers }),
    );
  },
};

interface Asked {
  readonly today: Day;
  readonly answers: BringInAnswers;
}

const runInMemory = async (
  given: Given,
  world: World,
  keeping: Keeping,
  { today, answers }: Asked,
): Promise<Outcome> => {
  const started = await startEmpty(keeping.workplace, given['signer'] ?? '');
  if (started.kind === 'refused') return failed(...problemLines(started.problems));
  const signer = started.result.signer.id;
  const paths = [given['missions'], given['people'], given['tests']].flatMap((path) => path ?? []);
  const { isAll, says: brought } = await bringInAll(keeping, world, { paths, signer, answers });
  if (!isAll) return failed(...brought);
  const person = personNamed(snapshotNow(keeping), given['person'] ?? '');
  if (person.kind === 'none') return failed(...brought, person.says);
  const road = await roadOf(keeping, person.thing, signer, today);
  return { ...road, says: [...brought, '', road.says].join('\n') };
};

const FIRST_WEEK = 7;

const roadOf = async (
  keeping: Keeping,
  { person, name, mission }: Known,
  signer: SignerId,
  today: Day,
): Promise<Outcome> => {
  const programme = programmeFrom(keeping, mission?.launch ?? today, today);
  if (!mission || programme === null) return failed(`${name} has no mission: name one in the table of people.`);
  const followed = await followProgramme(keeping.workplace, { person, signer, programme, from: today });
  if (followed.kind === 'refused') return failed(...problemLines(followed.problems));
  const snapshot = snapshotNow(keeping);
  const known = snapshot.known(person);
  const road = snapshot.road(person);
  if (!known || !road) return failed(`${name} is not in the log.`);
  const sessions = road.cards.filter(({ state, day }) => state === 'planned' && day < today + FIRST_WEEK).length;
  const issued = await issueNextDays(keeping.workplace, snapshot, known, signer, { sessions, reason: null });
  const before = [
    ...capacityLines(known, today),
    '',
    ...roadLines(known, today, snapshot.log),
    '',
    'What the signature under the first week covers',
    ...raiseLines(snapshot, known, sessions),
    '',
  ];
  return issued.kind === 'done'
    ? done(...before, weekText(issued.result.documents).text)
    : failed(...before, ...problemLines(issued.problems));
};

/** The shipped programme that holds the day on which the road begins. */
const programmeFrom = (keeping: Keeping, launch: Day, today: Day) => {
  const versions = [...snapshotNow(keeping).house.programmes.values()];
  const holds = versions.find(({ phases }) =>
    phases.some(({ span: { first } }) => first.from === 'launch' && first.days <= today - launch),
  );
  return (holds ?? versions[0])?.id ?? null;
};
