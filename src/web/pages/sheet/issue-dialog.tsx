import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { IssuePreviewWindow } from '#contract/windows/card-window.ts';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { totalMinutes } from '#domain/card.ts';
import type { Day } from '#units/day.ts';
import { post } from '../../api.ts';
import { Await } from '../../parts/await.tsx';
import { Button } from '../../parts/button.tsx';
import { shortDate } from '../../parts/dates.ts';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Empty } from '../../parts/page.tsx';
import { Problems } from '../../parts/problems.tsx';
import { RaiseTable } from '../../parts/raise-table.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { useSigner } from '../../signer.tsx';
import { useWrite } from '../../windows.ts';
import styles from './panel.module.css';

const DAYS_OF_A_WEEK = 7;

/** The first week of what can be issued. */
const firstWeek = (days: readonly Day[]): readonly Day[] => days.filter((day) => day < (days[0] ?? 0) + DAYS_OF_A_WEEK);

const usePreview = (person: string, days: readonly Day[]) =>
  useQuery({
    queryKey: [ROUTES.issuePreview(person), days],
    queryFn: () => post<IssuePreviewWindow>(ROUTES.issuePreview(person), { days }),
    enabled: days.length > 0,
    placeholderData: keepPreviousData,
  });

interface DayChoiceProps {
  readonly sheet: SheetWindow;
  readonly chosen: readonly Day[];
  readonly onChoose: (days: readonly Day[]) => void;
  readonly preview: IssuePreviewWindow | undefined;
}

const DayChoice = ({ sheet, chosen, onChoose, preview }: DayChoiceProps) => (
  <fieldset className={styles['days']}>
    <legend>Cards to issue</legend>
    {sheet.canIssue.map((day) => {
      const column = sheet.columns.find((each) => each.day === day);
      const card = preview?.cards.find((each) => each.card.day === day)?.card;
      return (
        <label key={day}>
          <input
            type="checkbox"
            checked={chosen.includes(day)}
            onChange={(event) =>
              onChoose(sheet.canIssue.filter((each) => (each === day ? event.target.checked : chosen.includes(each))))
            }
          />
          <span className={styles['day']}>{shortDate(day)}</span>
          <span className="soft">{column?.missionDay}</span>
          <span>{column?.title}</span>
          <span className="soft small">
            {card ? `${Math.round(totalMinutes(card))} of ${card.blockMinutes} min` : ''}
          </span>
        </label>
      );
    })}
  </fieldset>
);

const Seen = ({ preview }: { readonly preview: IssuePreviewWindow }) => (
  <>
    {preview.replaces.length > 0 ? (
      <p>Replaces {preview.replaces.map(({ code, missionDay }) => `card ${code} of ${missionDay}`).join(', ')}.</p>
    ) : null}
    {preview.cards.flatMap(({ card, gaps }) =>
      gaps.map((gap) => (
        <p className={styles['gap']} key={`${card.day} ${gap}`}>
          {card.missionDay}: {gap}
        </p>
      )),
    )}
    {preview.refusals.length > 0 ? (
      <Problems problems={preview.refusals.map((what) => ({ what, why: '', whatToDo: '', field: null }))} />
    ) : null}
  </>
);

interface SignProps {
  readonly sheet: SheetWindow;
  readonly days: readonly Day[];
  readonly preview: IssuePreviewWindow;
  /** Is the preview of these days, or still of those that were chosen before? */
  readonly isOfThese: boolean;
  readonly onIssued: (days: readonly Day[]) => void;
}

/** Every raise with its reasons, the caution, and the one button. */
const Sign = ({ sheet, days, preview, isOfThese, onIssued }: SignProps) => {
  const { signer } = useSigner();
  const [reasons, setReasons] = useState<Readonly<Record<string, string>>>({});
  const { send, isSending, problems } = useWrite();
  const isReasoned = preview.raises.every(
    ({ needsReason, track }) => !needsReason || (reasons[track] ?? '').trim() !== '',
  );
  const isReady = signer !== null && isOfThese && preview.refusals.length === 0 && isReasoned;
  const sign = (): void => {
    if (!signer) return;
    send(ROUTES.issue(sheet.person.id), { signer: signer.id, days, basis: preview.upTo, reasons }, () =>
      onIssued(days),
    );
  };
  return (
    <>
      {preview.raises.length > 0 ? (
        <RaiseTable
          raises={preview.raises}
          reasons={reasons}
          onReason={(track, reason) => setReasons({ ...reasons, [track]: reason })}
          problems={problems}
        />
      ) : (
        <p>No load goes up.</p>
      )}
      <Problems problems={problems} shownElsewhere={preview.raises.map(({ track }) => `reasons.${track}`)} />
      <p className={styles['defers']}>
        The tool advises a licensed professional. It defers to the physician and to local rules; what is signed here is
        your word.
      </p>
      <Actions>
        <Button kind="main" onPress={sign} isDisabled={isSending || !isReady} isFirst>
          Sign and issue
        </Button>
        <SignAs />
        {isReasoned ? null : <span className="soft">A raise above the step needs its reason.</span>}
      </Actions>
    </>
  );
};

const Issued = ({
  sheet,
  days,
  onClose,
}: {
  readonly sheet: SheetWindow;
  readonly days: readonly Day[];
  readonly onClose: () => void;
}) => (
  <>
    <output>
      {days.length === 1 ? 'One card is' : `${days.length} cards are`} issued: {days.map(shortDate).join(', ')}.
    </output>
    <Actions>
      <Link
        ref={(link) => link?.focus()}
        className={styles['print']}
        href={`/people/${sheet.person.id}/print/${days[0] ?? sheet.today}`}
      >
        Print week
      </Link>
      <Button onPress={onClose}>Back to the sheet</Button>
    </Actions>
  </>
);

/** The signature under cards: what goes up, by how much, at whose word. */
export const IssueDialog = ({ sheet, onClose }: { readonly sheet: SheetWindow; readonly onClose: () => void }) => {
  const [days, setDays] = useState(() => firstWeek(sheet.canIssue));
  const [issued, setIssued] = useState<readonly Day[] | null>(null);
  const preview = usePreview(sheet.person.id, issued ? [] : days);
  const held = sheet.columns.filter(({ state, gaps }) => state === 'planned' && gaps.length > 0);
  return (
    <Dialog title={`Issue cards to ${sheet.person.name}`} isOpen onClose={onClose}>
      {issued ? (
        <Issued sheet={sheet} days={issued} onClose={onClose} />
      ) : sheet.canIssue.length === 0 ? (
        <Empty>
          {held.length > 0
            ? held.map(({ day, gaps }) => `${shortDate(day)}: ${gaps.join(' ')}`).join(' ')
            : 'Nothing can be issued now: every card of the days that may be issued ahead is issued, or no session falls into them.'}
        </Empty>
      ) : (
        <>
          <DayChoice sheet={sheet} chosen={days} onChoose={setDays} preview={preview.data} />
          {days.length === 0 ? (
            <Empty>Choose at least one day.</Empty>
          ) : (
            <Await query={preview}>
              {(seen) => (
                <>
                  <Seen preview={seen} />
                  <Sign
                    sheet={sheet}
                    days={days}
                    preview={seen}
                    isOfThese={!preview.isPlaceholderData}
                    onIssued={setIssued}
                  />
                </>
              )}
            </Await>
          )}
        </>
      )}
    </Dialog>
  );
};
