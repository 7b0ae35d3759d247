import { HAND_UNITS } from '#domain/tested.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { useTests, type TestFieldsProps } from './endurance-form.tsx';
import { FactForm, type FormProps } from './fact-form.tsx';

const PLACES = ['gripLeft', 'gripRight', 'criticalLeft', 'criticalRight', 'jump', 'raisesLeft', 'raisesRight'] as const;
type Place = (typeof PLACES)[number];

const AT_FIELDS = ['day', ...PLACES.map((place) => `${place}.test.value.text`)];

/** Grip, what a hand holds for long, jumps and heel raises, each side by itself. */
export function HandsAndLegsForm(props: FormProps<'tested'>) {
  const { form, build, fields } = useTests(props);
  const { correcting, onDone } = props;
  const { typed, type, problems } = fields;
  return (
    <FactForm form={form} build={build} fields={AT_FIELDS} correcting={correcting} onCancel={onDone}>
      <Field label="Day" name="day" type="date" value={typed.day} onChange={type('day')} problems={problems} />
      <Hands {...fields} />
      <Legs {...fields} />
    </FactForm>
  );
}

interface OneProps extends Omit<TestFieldsProps, 'shows'> {
  readonly place: Place;
  readonly label: string;
  readonly unit?: string;
}

function One({ typed, type, problems, place, label, unit }: OneProps) {
  return (
    <Field
      label={label}
      name={`${place}.test.value.text`}
      value={typed[place]}
      onChange={type(place)}
      problems={problems}
      inputMode="decimal"
      {...(unit === undefined ? {} : { unit })}
    />
  );
}

function Hands({ typed, type, problems, shows }: TestFieldsProps) {
  const shared = { typed, type, problems };
  const hands = shows('greatest grip') || shows('critical force');
  return (
    <>
      {shows('greatest grip') && (
        <Fields>
          {shows('greatest grip', 'left') && (
            <One {...shared} place="gripLeft" label="Greatest grip, left" unit={typed.handUnit} />
          )}
          {shows('greatest grip', 'right') && (
            <One {...shared} place="gripRight" label="Greatest grip, right" unit={typed.handUnit} />
          )}
        </Fields>
      )}
      {shows('critical force') && (
        <Fields>
          {shows('critical force', 'left') && (
            <One {...shared} place="criticalLeft" label="Critical force, left" unit={typed.handUnit} />
          )}
          {shows('critical force', 'right') && (
            <One {...shared} place="criticalRight" label="Critical force, right" unit={typed.handUnit} />
          )}
        </Fields>
      )}
      {hands && (
        <Choice
          label="Unit of the hand’s force"
          value={typed.handUnit}
          onChange={type('handUnit')}
          options={HAND_UNITS.map((unit) => ({ value: unit, label: unit === 'N' ? 'N' : `${unit} of force` }))}
          hint="As the dynamometer showed it. Critical force: the mean at the end of an all-out test."
          isNarrow
        />
      )}
    </>
  );
}

function Legs({ typed, type, problems, shows }: TestFieldsProps) {
  const shared = { typed, type, problems };
  return (
    <>
      {shows('jump height') && (
        <Fields>
          <One {...shared} place="jump" label="Jump height" />
          <Choice
            label="Unit"
            value={typed.jumpUnit}
            onChange={type('jumpUnit')}
            options={['cm', 'in'].map((unit) => ({ value: unit, label: unit }))}
            isNarrow
          />
        </Fields>
      )}
      {shows('heel raises') && (
        <Fields>
          {shows('heel raises', 'left') && (
            <One {...shared} place="raisesLeft" label="Single-leg heel raises, left" unit="repetitions" />
          )}
          {shows('heel raises', 'right') && (
            <One {...shared} place="raisesRight" label="Single-leg heel raises, right" unit="repetitions" />
          )}
        </Fields>
      )}
    </>
  );
}
