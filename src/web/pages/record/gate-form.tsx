import { useState } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { WAYS_OF_WATCHING } from '#domain/squat-gate.ts';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay, typedWords } from './typed-values.ts';

/** A squat gate, judged by somebody who watched: what it asks for stands beside the answer. */
export function GateForm({ person, house, correcting, onDone }: FormProps<'judged'>) {
  const form = useFactForm(correcting, onDone);
  const [gate, setGate] = useState<string>(correcting?.gate ?? house.squatGates[0]?.name ?? '');
  const [passed, setPassed] = useState(correcting?.passed === false ? 'no' : 'yes');
  const [watched, setWatched] = useState<string>(correcting?.watched ?? WAYS_OF_WATCHING[0]);
  const [observedBy, setObservedBy] = useState(correcting?.observedBy ?? '');
  const [day, setDay] = useState(isoOfDay(correcting?.day ?? house.today));
  const build: Build = (problems) => {
    const on = typedDay(day, 'day', problems);
    const by = typedWords(observedBy, 'observedBy', problems);
    const chosen = house.squatGates.find(({ name }) => name === gate);
    const way = WAYS_OF_WATCHING.find((each) => each === watched);
    if (on === null || by === null || !chosen || !way) return null;
    return [
      { kind: 'judged', person, day: on, gate: chosen.name, passed: passed === 'yes', observedBy: by, watched: way },
    ];
  };
  return (
    <FactForm form={form} build={build} fields={['day', 'observedBy']} correcting={correcting} onCancel={onDone}>
      <Choice
        label="Gate"
        value={gate}
        onChange={setGate}
        options={house.squatGates.map(({ name }) => ({ value: name, label: name }))}
      />
      <WhatItAsks gate={house.squatGates.find(({ name }) => name === gate)} />
      <Fields>
        <Choice label="Passed" value={passed} onChange={setPassed} options={YES_OR_NO} />
        <Choice
          label="Seen"
          value={watched}
          onChange={setWatched}
          options={WAYS_OF_WATCHING.map((way) => ({ value: way, label: way }))}
        />
      </Fields>
      <Fields>
        <Field
          label="Who watched"
          name="observedBy"
          value={observedBy}
          onChange={setObservedBy}
          problems={form.problems}
        />
        <Field label="Day" name="day" type="date" value={day} onChange={setDay} problems={form.problems} />
      </Fields>
    </FactForm>
  );
}

const YES_OR_NO = [
  { value: 'yes', label: 'yes, all of it' },
  { value: 'no', label: 'not yet' },
];

function WhatItAsks({ gate }: { readonly gate: HouseWindow['squatGates'][number] | undefined }) {
  if (!gate) return null;
  return (
    <>
      <p className="soft">It asks for, and opens {gate.opens}:</p>
      <ul>
        {gate.asks.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </>
  );
}
