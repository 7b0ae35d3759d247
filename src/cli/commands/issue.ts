import { weekText } from '#interchange/plain-text/week-text.ts';
import { DATA_OPTIONS, done, failed, needed, optional, type Command } from '../command.ts';
import { personNamed, signerNamed } from '../find-by-name.ts';
import { issueNextDays } from '../issue-next-days.ts';
import { raiseLines } from '../raise-lines.ts';
import { problemLines, snapshotNow, withData } from '../with-data.ts';

const USUAL_SESSIONS = '3';

/** Without `--sign` nothing is issued: what would be signed is shown first. */
export const issue: Command = {
  name: 'issue',
  summary: 'Shows what the next cards of a person raise; with --sign issues them and prints them as text.',
  options: [
    needed('person', 'NAME', 'whose cards'),
    needed('signer', 'NAME', 'who signs'),
    optional('days', 'N', `how many sessions; else ${USUAL_SESSIONS}`),
    optional('reason', 'TEXT', 'for raises larger than one step of the policy'),
    optional('sign', null, 'sign and issue'),
    ...DATA_OPTIONS,
  ],
  run: (given, world) =>
    withData(given, world, async (keeping) => {
      const snapshot = snapshotNow(keeping);
      const [person, signer] = [
        personNamed(snapshot, given['person'] ?? ''),
        signerNamed(snapshot, given['signer'] ?? ''),
      ];
      if (person.kind === 'none') return failed(person.says);
      if (signer.kind === 'none') return failed(signer.says);
      const sessions = Number(given['days'] ?? USUAL_SESSIONS);
      if (!Number.isInteger(sessions) || sessions < 1) return failed(`--days is a whole number from 1.`);
      if (!given['sign']) return done(...raiseLines(snapshot, person.thing, sessions), 'Add --sign to issue.');
      const asked = { sessions, reason: given['reason'] ?? null };
      const answer = await issueNextDays(keeping.workplace, snapshot, person.thing, signer.thing.id, asked);
      return answer.kind === 'done'
        ? done(weekText(answer.result.documents).text)
        : failed(...problemLines(answer.problems));
    }),
};
