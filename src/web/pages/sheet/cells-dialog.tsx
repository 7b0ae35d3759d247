import { useState } from 'react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { CellAsked } from '#contract/requests/requests.ts';
import { ROUTES } from '#contract/routes.ts';
import type { CellsWindow } from '#contract/windows/cells-window.ts';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { post } from '../../api.ts';
import { Await } from '../../parts/await.tsx';
import { Button } from '../../parts/button.tsx';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Empty } from '../../parts/page.tsx';
import { Problems } from '../../parts/problems.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { useSigner } from '../../signer.tsx';
import { useWrite, type Write } from '../../windows.ts';
import type { Chosen } from './cells-chosen.ts';
import { CellsTable } from './cells-table.tsx';
import styles from './cells-table.module.css';

export interface CellsDialogProps {
  readonly sheet: SheetWindow;
  readonly title: string;
  readonly chosen: Chosen;
  /** What stands as the reason where none is typed. */
  readonly usualReason: string;
  readonly onClose: () => void;
  /** What stood in the cells before: written again, it takes this back. */
  readonly onWritten: (before: readonly CellAsked[]) => void;
}

/** What cells would come to, all of it before anything is written; then one signature writes them all. */
export const CellsDialog = (props: CellsDialogProps) => {
  const { sheet, title, chosen, onClose } = props;
  const { cells } = chosen;
  const writing = useWrite<Written>();
  const preview = useQuery({
    queryKey: [ROUTES.cells(sheet.person.id), cells],
    queryFn: () => post<CellsWindow>(ROUTES.cells(sheet.person.id), { cells }),
    // Once signed it would only say that nothing changes any more.
    enabled: cells.length > 0 && !writing.isSending,
    placeholderData: keepPreviousData,
  });
  return (
    <Dialog title={title} isOpen onClose={onClose}>
      {cells.length > 0 ? (
        <Await query={preview}>{(looked) => <Preview {...props} looked={looked} writing={writing} />}</Await>
      ) : (
        <NothingToWrite {...props} />
      )}
    </Dialog>
  );
};

const NothingToWrite = ({ chosen: { problems, alike }, onClose }: CellsDialogProps) => (
  <>
    <Problems problems={problems} />
    {problems.length > 0 ? null : (
      <Empty>
        {alike > 0
          ? 'Nothing would change: these cells say so already.'
          : 'No cell of a session ahead is chosen that this could write.'}
      </Empty>
    )}
    <Actions>
      <Button onPress={onClose} isFirst>
        Back to the sheet
      </Button>
    </Actions>
  </>
);

interface Written {
  readonly before: readonly CellAsked[];
}

interface LookedAt extends CellsDialogProps {
  readonly looked: CellsWindow;
  readonly writing: Write<Written>;
}

const Preview = (props: LookedAt) => {
  const { chosen, onClose, looked } = props;
  const problems = [...chosen.problems, ...looked.problems, ...looked.cells.flatMap((cell) => cell.problems)];
  return (
    <>
      {problems.length > 0 ? (
        <p>
          <strong>Nothing is written until every cell can be.</strong>
        </p>
      ) : null}
      <Problems problems={problems} />
      <CellsTable looked={looked} />
      {chosen.alike > 0 ? (
        <p className="soft">
          {chosen.alike === 1 ? 'One more cell says so already.' : `${chosen.alike} more cells say so already.`}
        </p>
      ) : null}
      {problems.length > 0 ? (
        <Actions>
          <Button onPress={onClose} isFirst>
            Back to the sheet
          </Button>
        </Actions>
      ) : (
        <Sign {...props} />
      )}
    </>
  );
};

const Sign = ({ sheet, chosen: { cells }, usualReason, looked, writing, onClose, onWritten }: LookedAt) => {
  const [reason, setReason] = useState('');
  const { signer } = useSigner();
  const { send, isSending, problems } = writing;
  const sign = (): void => {
    if (!signer || isSending) return;
    const request = { signer: signer.id, cells, reason: reason.trim() || usualReason, basis: looked.upTo };
    send(ROUTES.writeCells(sheet.person.id), request, ({ before }) => onWritten(before));
  };
  return (
    <form
      className={styles['sign']}
      onSubmit={(event) => {
        event.preventDefault();
        sign();
      }}
    >
      <Field
        label="Reason"
        name="reason"
        value={reason}
        onChange={setReason}
        problems={problems}
        placeholder={usualReason}
        isFirst
      />
      <Problems problems={problems} shownElsewhere={['reason']} />
      <Actions>
        <Button kind="main" type="submit" isDisabled={isSending || !signer}>
          {cells.length === 1 ? 'Sign this cell' : `Sign ${cells.length} cells`}
        </Button>
        <Button onPress={onClose}>Leave it</Button>
        <SignAs />
      </Actions>
      <p className="soft small">Nothing goes up by this: a raise is signed with its card.</p>
    </form>
  );
};
