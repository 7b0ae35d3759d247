import { dayFromIso, type Day } from '#units/day.ts';
import type { Known } from '#domain/known.ts';
import type { SignerId } from '#domain/identity.ts';
import type { BringInAnswers } from '#contract/bring-in.ts';
import { followProgramme } from '#actions/follow-programme.ts';
import { startEmpty } from '#actions/start-log.ts';
import { weekText } from '#interchange/plain-text/week-text.ts';
import { bringInAll } from '../bring-in-all.ts';
import { capacityLines, crossingLines } from '../capacity-lines.ts';
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
import { inOpening, problemLines, snapshotNow } from '../with-data.ts';

const USUAL_SESSIONS = '6';

/** The whole job once, in memory: tables in, signed cards out. */
export const firstWeek: Command = {
  name: 'first-week',
  summary: 'From tables of people, missions and tests to the signed first flight cards of one person, as text.',
  options: [
    needed('people', 'FILE', 'people: name, sex, birth date, body mass, mission'),
    needed('tests', 'FILE', 'tests: one a row, or one person a row'),
    optional('missions', 'FILE', 'missions: name, site, launch, landing'),
    needed('person', 'NAME', 'whose cards'),
    needed('signer', 'NAME', 'who signs'),
    needed('today', 'YYYY-MM-DD', 'the day on which the cards are issued'),
    optional('days', 'N', `how many sessions; else ${USUAL_SESSIONS}, those of flight days 2 to 7`),
    optional('answers', 'FILE', 'JSON with answers to what the files do not say'),
  ],
  run: async (given, world) => {
    const today = dayFromIso(given['today'] ?? '');
    const sessions = Number(given['days'] ?? USUAL_SESSIONS);
    if (today === null) return failed(`"${given['today']}" is no day such as 2027-03-01.`);
    if (!Number.isInteger(sessions) || sessions < 1) return failed('--days is a whole number from 1.');
    const reading = await readAnswers(given['answers'], world);
    if (reading.kind === 'wrong') return failed(reading.says);
    return inOpening(await world.openInMemory(today), (keeping) =>
      runInMemory(given, world, keeping, { today, sessions, answers: reading.answers }),
    );
  },
};

interface Asked {
  readonly today: Day;
  readonly sessions: number;
  readonly answers: BringInAnswers;
}

const runInMemory = async (given: Given, world: World, keeping: Keeping, asked: Asked): Promise<Outcome> => {
  const started = await startEmpty(keeping.workplace, given['signer'] ?? '');
  if (started.kind === 'refused') return failed(...problemLines(started.problems));
  const signer = started.result.signer.id;
  const paths = [given['missions'], given['people'], given['tests']].flatMap((path) => path ?? []);
  const { isAll, says: brought } = await bringInAll(keeping, world, { paths, signer, answers: asked.answers });
  if (!isAll) return failed(...brought);
  const person = personNamed(snapshotNow(keeping), given['person'] ?? '');
  if (person.kind === 'none') return failed(...brought, person.says);
  const cards = await cardsOf(keeping, person.thing, signer, asked);
  return { ...cards, says: [...brought, '', cards.says].join('\n') };
};

const cardsOf = async (
  keeping: Keeping,
  { person, name, mission }: Known,
  signer: SignerId,
  { today, sessions }: Asked,
): Promise<Outcome> => {
  const [programme] = [...snapshotNow(keeping).house.programmes.keys()];
  if (!mission || programme === undefined) return failed(`${name} has no mission: name one in the table of people.`);
  const followed = await followProgramme(keeping.workplace, { person, signer, programme, from: mission.launch });
  if (followed.kind === 'refused') return failed(...problemLines(followed.problems));
  const snapshot = snapshotNow(keeping);
  const known = snapshot.known(person);
  if (!known) return failed(`${name} is not in the log.`);
  const asked = { sessions, reason: null };
  const issued = await issueNextDays(keeping.workplace, snapshot, known, signer, asked);
  const before = [
    ...capacityLines(known, today),
    '',
    ...crossingLines(known, today),
    '',
    'What the signature covers',
    ...raiseLines(snapshot, known, sessions),
    '',
  ];
  return issued.kind === 'done'
    ? done(...before, weekText(issued.result.documents).text)
    : failed(...before, ...problemLines(issued.problems));
};
