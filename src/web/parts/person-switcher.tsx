import { useLocation } from 'wouter';
import type { HouseWindow } from '#contract/windows/house-window.ts';

const GROUPS = [
  { group: 'in flight', label: 'In flight' },
  { group: 'before launch', label: 'Before launch' },
  { group: 'returned', label: 'Returned' },
  { group: 'no mission', label: 'No mission' },
] as const;

export interface PersonSwitcherProps {
  readonly house: HouseWindow;
  readonly person: string;
  /** The page that stays open: "/capacity", or empty for the Sheet. */
  readonly tail: string;
}

/** The same page of somebody else. */
export const PersonSwitcher = ({ house, person, tail }: PersonSwitcherProps) => {
  const [, go] = useLocation();
  return (
    <select aria-label="Person" value={person} onChange={(event) => go(`/people/${event.target.value}${tail}`)}>
      {GROUPS.map(({ group, label }) => {
        const people = house.people.filter((line) => line.group === group);
        return people.length > 0 ? (
          <optgroup key={group} label={label}>
            {people.map(({ id, name, dayLabel }) => (
              <option key={id} value={id}>
                {name}, {dayLabel}
              </option>
            ))}
          </optgroup>
        ) : null;
      })}
    </select>
  );
};
