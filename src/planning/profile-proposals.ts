import type { Day } from '#units/day.ts';
import { profileOn, type ProfileLine, type ProfileQuality } from '#assessing/profile.ts';
import type { Exercise, Pattern } from '#domain/catalogue.ts';
import type { FactId, TrackId } from '#domain/identity.ts';
import { placeInProgramme, type ProgrammeItem } from '#domain/programme.ts';
import type { Proposal } from '#domain/road.ts';
import { kilogramsPer } from '#units/mass.ts';
import { adjustmentsOn } from './adjustments.ts';
import { programmeOn, type PlanContext } from './plan-context.ts';
import type { Progress, TrackState } from './progress.ts';
import { proposalId } from './proposal-id.ts';

/** What a weakness asks for more of. */
interface Ask {
  readonly subject: string;
  readonly patterns: readonly Pattern[];
  readonly says: readonly string[];
  readonly facts: readonly FactId[];
}

/** What a person's profile suggests: a set or a bout more of what is weak, signed, changed or declined. */
export const profileProposals = (context: PlanContext, progress: Progress, today: Day): readonly Proposal[] =>
  asksOf(context, progress, today).flatMap((ask) => {
    const track = trackToGrow(context, ask, today);
    if (!track) return [];
    const { known } = context;
    const says = `${ask.says.join(' ')} ${track.unit === 'bout' ? 'A bout' : 'A set'} more of ${track.name.toLowerCase()} each time?`;
    return [
      {
        id: proposalId('profile', known.person, `${ask.subject} ${track.id}`, ask.facts),
        person: known.person,
        rule: 'profile' as const,
        state: 'open' as const,
        day: today,
        says,
        because: ask.facts,
        raises: [],
        change: {
          kind: 'adjust' as const,
          person: known.person,
          track: track.id,
          change: { kind: 'sets by' as const, by: 1 },
          from: today,
          until: null,
          reason: ask.says.join(' '),
        },
      },
    ];
  });

const PATTERNS_OF: Readonly<Record<ProfileQuality, readonly Pattern[]>> = {
  aerobic: ['running', 'cycling', 'rowing'],
  calf: ['heel raise'],
  grip: ['grip'],
};

const asksOf = (context: PlanContext, progress: Progress, today: Day): readonly Ask[] => {
  const low = profileOn(context.known, today).filter(({ standing }) => standing === 'low');
  const qualities = [...new Set(low.map(({ quality }) => quality))];
  return [
    ...qualities.map((quality) =>
      askFor(
        quality,
        low.filter((line) => line.quality === quality),
      ),
    ),
    ...pullingAsk(context, progress),
  ];
};

const askFor = (quality: ProfileQuality, lines: readonly ProfileLine[]): Ask => ({
  subject: quality,
  patterns: PATTERNS_OF[quality],
  says: lines.map(({ says }) => says),
  facts: [...new Set(lines.flatMap(({ facts }) => facts))],
});

/** Rowing much less than is pressed asks for more pulling; common practice, no source. */
const LEAST_PULL = 0.85;

/** The last rows against the last bench presses, on one kind of load and of about as many repetitions. */
const pullingAsk = ({ known }: PlanContext, progress: Progress): readonly Ask[] => {
  const heaviest = (pattern: Pattern): { readonly state: TrackState; readonly kilograms: number } | null => {
    const lasts = [...progress.tracks.values()].flatMap((state) => {
      const machine = known.house.machines.get(state.machine);
      const exercise = known.house.exercises.get(state.exercise);
      if (!machine || !state.last || exercise?.pattern !== pattern || machine.gravity === '0 g' || exercise.perSide)
        return [];
      return [{ state, kilograms: state.last.increments * Number(machine.increment) * kilogramsPer(machine.unit) }];
    });
    return lasts.toSorted((a, b) => b.kilograms - a.kilograms)[0] ?? null;
  };
  const [pull, press] = [heaviest('horizontal pull'), heaviest('horizontal press')];
  if (!pull || !press || pull.kilograms >= LEAST_PULL * press.kilograms) return [];
  const percent = Math.round((100 * pull.kilograms) / press.kilograms);
  return [
    {
      // Declined, it comes back where the difference has moved by a tenth.
      subject: `pulling ${Math.floor(percent / 10)}`,
      patterns: ['horizontal pull'],
      says: [`What is rowed is ${percent} % of what is pressed.`],
      facts: [],
    },
  ];
};

interface Growing {
  readonly id: TrackId;
  readonly name: string;
  readonly unit: 'set' | 'bout';
}

/** The first track of the phase that trains what is asked for and was not changed so already; bouts in turn before steady ones. */
const trackToGrow = (context: PlanContext, { patterns }: Ask, today: Day): Growing | null => {
  const { known } = context;
  const programme = programmeOn(context, today);
  const place = programme && known.mission && placeInProgramme(programme, known.mission, today);
  const changed = new Set(
    adjustmentsOn(context, today).flatMap(({ track, change }) => (change.kind === 'sets by' ? [track] : [])),
  );
  const found = (place?.phase.sessions ?? [])
    .flatMap(({ items }) => items)
    .flatMap((item) => {
      const exercise = known.house.exercises.get(item.exercise);
      return exercise && patterns.includes(exercise.pattern) && isForThem(context, item) ? [{ item, exercise }] : [];
    });
  // One more of what is weak is enough: whoever wants a second one writes it.
  if (found.some(({ item }) => changed.has(item.track))) return null;
  const [first] = found.toSorted((a, b) => Number(isInTurn(b.item)) - Number(isInTurn(a.item)));
  return first ? growing(first) : null;
};

const isForThem = ({ known }: PlanContext, { condition }: ProgrammeItem): boolean =>
  condition === 'everyone' || (condition === 'space-walk crew' && known.assignment?.spaceWalks === true);

const isInTurn = (item: ProgrammeItem): boolean => item.kind === 'bouts' && item.bouts.length > 1;

const growing = ({ item, exercise }: { readonly item: ProgrammeItem; readonly exercise: Exercise }): Growing => ({
  id: item.track,
  name: exercise.name,
  unit: item.kind === 'bouts' ? 'bout' : 'set',
});
