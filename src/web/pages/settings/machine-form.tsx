import { useState } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { MachineSetting } from '#contract/windows/settings-window.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { LimitRows } from './limit-rows.tsx';
import { FixedOfMachine, MachineLoadFields, MachinePlaceFields, MinuteFields } from './machine-fields.tsx';
import { isLoaded, machineLabels, machineOf, typedMachineOf, type TextOfMachine } from './typed-machine.ts';

interface MachineFormProps {
  readonly house: HouseWindow;
  /** Null: a new machine. */
  readonly of: MachineSetting | null;
  readonly onDone: (said: string | null) => void;
}

/** A machine at a site. What its loads are counted in stays for ever, for every load in the log is counted in it. */
export function MachineForm({ house, of, onDone }: MachineFormProps) {
  const before = of?.machine ?? null;
  const [typed, setTyped] = useState(() => typedMachineOf(before));
  const type = (key: TextOfMachine) => (text: string) => setTyped((was) => ({ ...was, [key]: text }));
  const labels = machineLabels(typed.limits.length);
  const change = useChange({
    supersedes: of?.history[0]?.fact ?? null,
    labels,
    asksWhy: of !== null,
    onDone,
  });
  const build: BuildChange = (problems) => {
    const machine = machineOf(typed, before, house, problems);
    return machine && { kind: 'catalogued', entry: { kind: 'machine', machine } };
  };
  const shared = { typed, type, house, before, problems: change.problems };
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={labels}
      asksWhy={of !== null}
      action={of === null ? 'Enter' : 'Change'}
      onCancel={() => onDone(null)}
    >
      {of !== null && of.cards.length > 0 && (
        <p className="small">
          {of.cards.length === 1 ? 'One issued card is' : `${of.cards.length} issued cards are`} for it as it is now,
          and stand so; what changes here shows on cards that are issued from now on.
        </p>
      )}
      {before !== null && <FixedOfMachine machine={before} />}
      <MachinePlaceFields {...shared} />
      {isLoaded(typed.kind) && <MachineLoadFields {...shared} />}
      {isLoaded(typed.kind) && (
        <LimitRows
          house={house}
          unit={before?.unit ?? typed.unit}
          limits={typed.limits}
          onLimits={(limits) => setTyped((was) => ({ ...was, limits: limits(was.limits) }))}
          problems={change.problems}
        />
      )}
      <MinuteFields {...shared} />
    </ChangeForm>
  );
}
