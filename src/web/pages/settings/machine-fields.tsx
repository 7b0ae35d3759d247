import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { MACHINE_KINDS, type Machine } from '#domain/catalogue.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import styles from './settings-page.module.css';
import { flownMachines, hasSpeed, hasWatts, isLoaded, type TextOfMachine, type TypedMachine } from './typed-machine.ts';

export interface MachineFieldsProps {
  readonly typed: TypedMachine;
  readonly type: (key: TextOfMachine) => (text: string) => void;
  readonly house: HouseWindow;
  readonly before: Machine | null;
  readonly problems: readonly Problem[];
}

/** What of a machine never changes, and why. */
export const FixedOfMachine = ({ machine: { kind, unit, increment, gravity } }: { readonly machine: Machine }) => (
  <div className="small">
    <dl className={styles['fixed']}>
      <Fixed of="kind">{kind}</Fixed>
      {isLoaded(kind) && <Fixed of="one step">{`${increment} ${unit}`}</Fixed>}
      <Fixed of="gravity">{gravity}</Fixed>
    </dl>
    <p className="soft">
      These stay: every load on cards and in the log is counted in them. One that counts otherwise is a new machine.
    </p>
  </div>
);

const Fixed = ({ of, children }: { readonly of: string; readonly children: string }) => (
  <div>
    <dt className="soft">{of}</dt>
    <dd>{children}</dd>
  </div>
);

/** Name and site; of a new machine its kind too. */
export function MachinePlaceFields({ typed, type, house, before, problems }: MachineFieldsProps) {
  const place = house.sites.find(({ id }) => id === typed.site)?.place;
  const sites =
    before === null
      ? house.sites
      : house.sites.filter((site) => (site.place === 'aboard') === (before.gravity === '0 g'));
  const flown = place === 'ground' ? flownMachines(house, typed.kind) : [];
  return (
    <>
      <Fields>
        <Field
          label="Name"
          name="entry.machine.name"
          value={typed.name}
          onChange={type('name')}
          problems={problems}
          isFirst
        />
        <Choice
          label="Site"
          name="entry.machine.site"
          value={typed.site}
          onChange={type('site')}
          options={sites.map(({ id, name, place: at }) => ({ value: id, label: `${name}, ${SITE_PLACES[at]}` }))}
          nothing="choose …"
          problems={problems}
          {...(before === null && place
            ? { hint: place === 'aboard' ? 'Pulls in weightlessness.' : 'Loaded in 1 g.' }
            : {})}
        />
        {before === null && (
          <Choice
            label="Kind"
            name="entry.machine.kind"
            value={typed.kind}
            onChange={type('kind')}
            options={MACHINE_KINDS.map((kind) => ({ value: kind, label: kind }))}
            problems={problems}
          />
        )}
      </Fields>
      {flown.length > 0 && (
        <Choice
          label="Ground unit of"
          name="entry.machine.groundUnitOf"
          value={typed.groundUnitOf}
          onChange={type('groundUnitOf')}
          options={flown.map(({ id, name }) => ({ value: id, label: name }))}
          nothing="none"
          problems={problems}
          hint="A capacity on the ground unit is carried over to the machine aboard at launch."
        />
      )}
    </>
  );
}

export const SITE_PLACES = { ground: 'on the ground', aboard: 'aboard' } as const;

/** What can be set: of a new machine its unit and step too. */
export function MachineLoadFields({ typed, type, before, problems }: MachineFieldsProps) {
  const unit = before?.unit ?? typed.unit;
  const load = { inputMode: 'decimal', unit, problems } as const;
  return (
    <>
      <h3 className={styles['part']}>{hasSpeed(typed.kind) ? 'Pull of the harness' : 'Loads'}</h3>
      <div className={styles['numbers']}>
        {before === null && (
          <>
            <Choice
              label="Counted in"
              value={typed.unit}
              onChange={type('unit')}
              options={['kg', 'lb'].map((each) => ({ value: each, label: each }))}
            />
            <Field
              {...load}
              label="One step"
              name="entry.machine.increment"
              value={typed.increment}
              onChange={type('increment')}
            />
          </>
        )}
        <Field {...load} label="Least" name="entry.machine.least" value={typed.least} onChange={type('least')} />
        <Field
          {...load}
          label="Ceiling"
          name="entry.machine.ceiling"
          value={typed.ceiling}
          onChange={type('ceiling')}
        />
      </div>
      {before === null && (
        <p className="soft small">
          Least is the bar or the machine alone. Unit and step stay for ever once they are entered.
        </p>
      )}
    </>
  );
}

/** What using it costs in minutes; of a cycle, rower or treadmill its most. */
export function MinuteFields({ typed, type, problems }: MachineFieldsProps) {
  const minutes = { inputMode: 'decimal', unit: 'min', problems } as const;
  return (
    <>
      <h3 className={styles['part']}>Minutes</h3>
      <div className={styles['numbers']}>
        <Field
          {...minutes}
          label="Set-up"
          name="entry.machine.minutes.setUp"
          value={typed.setUp}
          onChange={type('setUp')}
        />
        <Field {...minutes} label="Stow" name="entry.machine.minutes.stow" value={typed.stow} onChange={type('stow')} />
        <Field
          {...minutes}
          label="Change of exercise"
          name="entry.machine.minutes.changeExercise"
          value={typed.changeExercise}
          onChange={type('changeExercise')}
        />
        <Field
          {...minutes}
          label="Change of load"
          name="entry.machine.minutes.changeLoad"
          value={typed.changeLoad}
          onChange={type('changeLoad')}
        />
        {hasWatts(typed.kind) && (
          <Field
            {...minutes}
            unit="W"
            label="Most watts"
            name="entry.machine.mostWatts"
            value={typed.mostWatts}
            onChange={type('mostWatts')}
          />
        )}
        {hasSpeed(typed.kind) && (
          <Field
            {...minutes}
            unit="km/h"
            label="Fastest"
            name="entry.machine.mostSpeed"
            value={typed.mostSpeed}
            onChange={type('mostSpeed')}
          />
        )}
      </div>
    </>
  );
}
