import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Side } from '#domain/effort.ts';
import type { Test } from '#domain/tested.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { StageTable } from './stage-table.tsx';
import { startOfTests, testsOf, type TypedTests } from './typed-tests.ts';

/** What a form of tests hands to its fields. */
export interface TestFieldsProps {
  readonly typed: TypedTests;
  readonly type: <Key extends keyof TypedTests>(key: Key) => (value: TypedTests[Key]) => void;
  readonly problems: readonly Problem[];
  /** A correction is of one test alone. */
  readonly shows: (what: Test['what'], side?: Side) => boolean;
}

/** State of a form of tests: what is typed, and the facts that it comes to. */
export const useTests = ({ person, house, correcting, onDone }: FormProps<'tested'>) => {
  const form = useFactForm(correcting, onDone);
  const [typed, setTyped] = useState<TypedTests>(() => startOfTests(house.today, correcting));
  const type: TestFieldsProps['type'] = (key) => (value) => setTyped((before) => ({ ...before, [key]: value }));
  const build: Build = (problems) => testsOf(typed, person, problems);
  const shows: TestFieldsProps['shows'] = (what, side) =>
    correcting === null ||
    (correcting.test.what === what &&
      (side === undefined || !('side' in correcting.test) || correcting.test.side === side));
  return { form, build, fields: { typed, type, problems: form.problems, shows } };
};

/** Stages show their own problems in their rows, up to as many as anybody rides. */
const MOST_STAGES = 20;
const ofStages = (at: string, setting: string): readonly string[] =>
  Array.from({ length: MOST_STAGES }, (_, place) =>
    [setting, 'heartRate', 'uptake'].map((field) => `${at}.${place}.test.${field}.text`),
  ).flat();

const AT_FIELDS = [
  'day',
  'uptake.test.value.text',
  'greatest.test.value.text',
  'resting.test.value.text',
  ...ofStages('cycle', 'watts'),
  ...ofStages('running', 'speed'),
];

/** A test of endurance: what the body can at most, at rest, and stage by stage. Whatever was not tested stays open. */
export function EnduranceForm(props: FormProps<'tested'>) {
  const { form, build, fields } = useTests(props);
  const { correcting, onDone, house } = props;
  return (
    <FactForm form={form} build={build} fields={AT_FIELDS} correcting={correcting} onCancel={onDone}>
      <Field
        label="Day"
        name="day"
        type="date"
        value={fields.typed.day}
        onChange={fields.type('day')}
        problems={fields.problems}
      />
      <GreatestFields {...fields} />
      <Stages {...fields} house={house} mayGrow={correcting === null} />
      <p className="soft small">Watts and speeds of the cards are set from these; without them effort leads.</p>
    </FactForm>
  );
}

function GreatestFields({ typed, type, problems, shows }: TestFieldsProps) {
  return (
    <>
      {shows('greatest oxygen uptake') && (
        <Fields>
          <Field
            label="Greatest oxygen uptake"
            name="uptake.test.value.text"
            value={typed.uptake}
            onChange={type('uptake')}
            problems={problems}
            inputMode="decimal"
            unit="mL/(kg min)"
          />
          <Choice
            label="How"
            value={typed.how}
            onChange={type('how')}
            options={[
              { value: 'measured', label: 'measured' },
              { value: 'estimated', label: 'estimated' },
            ]}
            isNarrow
          />
        </Fields>
      )}
      <Fields>
        {shows('greatest heart rate') && (
          <Field
            label="Greatest heart rate"
            name="greatest.test.value.text"
            value={typed.greatest}
            onChange={type('greatest')}
            problems={problems}
            inputMode="numeric"
            unit="/min"
          />
        )}
        {shows('resting heart rate') && (
          <Field
            label="Resting heart rate"
            name="resting.test.value.text"
            value={typed.resting}
            onChange={type('resting')}
            problems={problems}
            inputMode="numeric"
            unit="/min"
          />
        )}
      </Fields>
    </>
  );
}

interface StagesProps extends TestFieldsProps {
  readonly house: HouseWindow;
  readonly mayGrow: boolean;
}

function Stages({ typed, type, problems, shows, house, mayGrow }: StagesProps) {
  const cycles = house.machines.filter(({ kind }) => kind === 'cycle');
  return (
    <>
      {shows('cycle stage') && (
        <>
          <StageTable
            caption="Steady stages on a cycle"
            at="cycle"
            stages={typed.cycle}
            onStages={type('cycle')}
            problems={problems}
            mayGrow={mayGrow}
          />
          <Choice
            label="Ridden on"
            value={typed.machine}
            onChange={type('machine')}
            options={cycles.map(({ id, name }) => ({ value: id, label: name }))}
            nothing="a cycle that is not listed"
          />
        </>
      )}
      {shows('running stage') && (
        <StageTable
          caption="Steady stages of running, level belt in 1 g"
          at="running"
          stages={typed.running}
          onStages={type('running')}
          problems={problems}
          mayGrow={mayGrow}
        />
      )}
    </>
  );
}
