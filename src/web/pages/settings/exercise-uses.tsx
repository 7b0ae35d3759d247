import { Link } from 'wouter';
import type { ExerciseSetting, ProgrammeUse } from '#contract/windows/settings-window.ts';
import { shortDate } from '../../parts/parts.ts';

/** Which programmes ask for an exercise, and which issued cards hold it as it was. */
export function ExerciseUses({ setting: { uses, cards } }: { readonly setting: ExerciseSetting }) {
  const versions = new Map(uses.map((use) => [use.version, use] as const));
  return (
    <section>
      <h4>used by</h4>
      {versions.size === 0 ? (
        <p className="soft">no programme</p>
      ) : (
        <ul>
          {[...versions.values()].map((use) => (
            <li key={use.version}>
              <Link href={`/programmes#${use.version}`}>
                {use.programme}, version {use.number}
              </Link>{' '}
              <span className="soft">
                {placesOf(uses.filter(({ version }) => version === use.version))}; followed by {use.followers}
              </span>
            </li>
          ))}
        </ul>
      )}
      {cards.length > 0 && (
        <>
          <h4>issued and not yet trained, as it was then</h4>
          <p>
            {cards.map(({ card, person, day }, place) => (
              <span key={card}>
                {place > 0 && ', '}
                <Link href={`/cards/${card}`}>
                  {person} {shortDate(day)}
                </Link>
              </span>
            ))}
          </p>
        </>
      )}
    </section>
  );
}

/** "main flight with the resistive machine; taper with the free bar". */
const placesOf = (uses: readonly ProgrammeUse[]): string => {
  const kinds = [...new Set(uses.map(({ machineKind }) => machineKind))];
  return kinds
    .map((kind) => {
      const phases = new Set(uses.filter(({ machineKind }) => machineKind === kind).map(({ phase }) => phase));
      return `${[...phases].join(', ')}: ${kind}`;
    })
    .join('; ');
};
