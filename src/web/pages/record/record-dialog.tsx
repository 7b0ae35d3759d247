import type { RecordLine, RecordWindow } from '#contract/windows/record-window.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Fact } from '#domain/fact.ts';
import { Dialog } from '../../parts/parts.ts';
import { EnduranceForm } from './endurance-form.tsx';
import { GateForm } from './gate-form.tsx';
import { HandsAndLegsForm } from './hands-and-legs-form.tsx';
import { LiftingForm } from './lifting-form.tsx';
import { MeasurementForm } from './measurement-form.tsx';
import { MissionForm } from './mission-form.tsx';
import { PersonForm } from './person-form.tsx';
import { ReceiptForm } from './receipt-form.tsx';
import { RestrictionForm } from './restriction-form.tsx';
import { RoadHoldForm } from './road-hold-form.tsx';
import { SetAsideForm } from './set-aside-form.tsx';
import { SetUpForm } from './set-up-form.tsx';
import { SpaceWalkForm } from './space-walk-form.tsx';
import { StayForm } from './stay-form.tsx';
import { TakeBackForm } from './take-back-form.tsx';
import { TestForm } from './test-form.tsx';
import { isOfEndurance } from './typed-tests.ts';
import { WeeklyMinutesForm } from './weekly-minutes-form.tsx';

export const RECORDABLE = [
  'test',
  'endurance test',
  'hands, jumps, heel raises',
  'body mass',
  'stature',
  'heaviest bar',
  'restriction',
  'receipt',
  'mission dates',
  'training site',
  'squat gate',
  'machine settings',
  'weekly minutes',
  'days set aside',
  'space walk',
  'road hold',
] as const;
export type Recordable = (typeof RECORDABLE)[number];

export type Doing =
  | { readonly kind: 'record'; readonly what: Recordable }
  | { readonly kind: 'correct'; readonly line: RecordLine }
  | { readonly kind: 'take back'; readonly line: RecordLine }
  | { readonly kind: 'lift'; readonly restriction: RecordWindow['restrictions'][number] };

interface RecordDialogProps {
  readonly doing: Doing;
  readonly record: RecordWindow;
  readonly house: HouseWindow;
  readonly onDone: () => void;
}

export function RecordDialog({ doing, record, house, onDone }: RecordDialogProps) {
  return (
    <Dialog title={`${titleOf(doing)}: ${record.person.name}`} isOpen onClose={onDone} place="side">
      <FormFor doing={doing} record={record} house={house} onDone={onDone} />
    </Dialog>
  );
}

const titleOf = (doing: Doing): string => {
  switch (doing.kind) {
    case 'record':
      return `Record ${doing.what}`;
    case 'correct':
      return `Correct ${doing.line.kind}`;
    case 'take back':
      return `Take back ${doing.line.kind}`;
    case 'lift':
      return 'Record that a restriction is lifted';
  }
};

function FormFor({ doing, record, house, onDone }: RecordDialogProps) {
  const shared = { person: record.person.id, house, onDone };
  switch (doing.kind) {
    case 'take back':
      return <TakeBackForm line={doing.line} onDone={onDone} />;
    case 'lift':
      return <LiftingForm {...shared} {...doing.restriction} restriction={doing.restriction.fact} correcting={null} />;
    case 'correct':
      return <CorrectionForm {...shared} record={record} line={doing.line} />;
    case 'record':
      return <NewForm {...shared} record={record} what={doing.what} />;
  }
}

interface FormChoiceProps extends Omit<RecordDialogProps, 'doing'> {
  readonly person: RecordWindow['person']['id'];
}

function NewForm({ what, record, ...shared }: FormChoiceProps & { readonly what: Recordable }) {
  switch (what) {
    case 'test':
      return <TestForm {...shared} correcting={null} />;
    case 'endurance test':
      return <EnduranceForm {...shared} correcting={null} />;
    case 'hands, jumps, heel raises':
      return <HandsAndLegsForm {...shared} correcting={null} />;
    case 'weekly minutes':
      return <WeeklyMinutesForm {...shared} correcting={null} />;
    case 'days set aside':
      return <SetAsideForm {...shared} correcting={null} />;
    case 'space walk':
      return <SpaceWalkForm {...shared} correcting={null} />;
    case 'road hold':
      return <RoadHoldForm {...shared} correcting={null} />;
    case 'restriction':
      return <RestrictionForm {...shared} correcting={null} />;
    case 'receipt':
      return <ReceiptForm {...shared} record={record} correcting={null} />;
    case 'squat gate':
      return <GateForm {...shared} correcting={null} />;
    case 'machine settings':
      return <SetUpForm {...shared} record={record} correcting={null} />;
    case 'training site':
      return <StayForm {...shared} correcting={null} />;
    case 'mission dates':
      return <MissionForm {...shared} record={record} correcting={null} />;
    case 'body mass':
    case 'stature':
    case 'heaviest bar':
      return <MeasurementForm {...shared} what={what} correcting={null} />;
  }
}

const CORRECTABLE = [
  'lifted',
  'restricted',
  'received',
  'measured',
  'carried',
  'introduced',
  'stays',
  'judged',
  'tested',
  'available',
  'set aside',
  'space walk',
  'road holds',
  'set up',
] as const;
type CorrectableFact = Fact<(typeof CORRECTABLE)[number]>;

const hasForm = (fact: Fact): fact is CorrectableFact => CORRECTABLE.some((kind) => kind === fact.kind);

/** Kinds of facts that are corrected in a form of their own. */
export const isCorrectable = ({ fact }: RecordLine): boolean => hasForm(fact);

function CorrectionForm({ line: { fact }, record, ...shared }: FormChoiceProps & { readonly line: RecordLine }) {
  if (!hasForm(fact)) return <p>This entry is corrected where it was made.</p>;
  switch (fact.kind) {
    case 'lifted':
      return <TestForm {...shared} correcting={fact} />;
    case 'tested':
      return isOfEndurance(fact.test.what) ? (
        <EnduranceForm {...shared} correcting={fact} />
      ) : (
        <HandsAndLegsForm {...shared} correcting={fact} />
      );
    case 'available':
      return <WeeklyMinutesForm {...shared} correcting={fact} />;
    case 'set aside':
      return <SetAsideForm {...shared} correcting={fact} />;
    case 'space walk':
      return <SpaceWalkForm {...shared} correcting={fact} />;
    case 'road holds':
      return <RoadHoldForm {...shared} correcting={fact} />;
    case 'restricted':
      return <RestrictionForm {...shared} correcting={fact} />;
    case 'received':
      return <ReceiptForm {...shared} record={record} correcting={fact} />;
    case 'measured':
      return <MeasurementForm {...shared} what={fact.what} correcting={fact} />;
    case 'carried':
      return <MeasurementForm {...shared} what="heaviest bar" correcting={fact} />;
    case 'judged':
      return <GateForm {...shared} correcting={fact} />;
    case 'set up':
      return <SetUpForm {...shared} record={record} correcting={fact} />;
    case 'stays':
      return <StayForm {...shared} correcting={fact} />;
    case 'introduced':
      return <PersonForm {...shared} correcting={fact} />;
  }
}
