import type { Problem } from '#contract/problem.ts';
import { Field, Fields } from '../../parts/field.tsx';
import { NO_PIECE } from './planned-sets.ts';
import type { PieceDraft, PlannedPiece, ResultsDraft } from './results-draft.ts';
import styles from './panel.module.css';

export interface PieceFieldsProps {
  readonly pieces: readonly PlannedPiece[];
  readonly draft: ResultsDraft;
  readonly onChange: (draft: ResultsDraft) => void;
  readonly problems: readonly Problem[];
  /** Typing starts at this item. */
  readonly item: string | null;
}

interface Asked {
  readonly label: string;
  readonly unit?: string;
}

const askedAs = (field: keyof PieceDraft, { of, unit, kind }: PlannedPiece): Asked => {
  switch (field) {
    case 'done':
      return { label: `${kind === 'bouts' ? 'Bouts' : 'Sets'} done of ${of}` };
    case 'minutes':
      return { label: 'Minutes', unit: 'min' };
    case 'watts':
      return { label: 'Power', unit: 'W' };
    case 'speed':
      return { label: 'Speed', unit: 'km/h' };
    case 'harness':
      return { label: 'Harness, both sides', unit };
    case 'heartRate':
      return { label: 'Heart rate, mean', unit: '/min' };
    case 'effort':
      return { label: 'RPE, 1 to 10' };
  }
};

const Piece = ({
  piece,
  draft,
  onChange,
  problems,
  startsHere,
}: Omit<PieceFieldsProps, 'pieces' | 'item'> & { readonly piece: PlannedPiece; readonly startsHere: boolean }) => {
  const typed = draft.pieces[piece.item] ?? NO_PIECE;
  return (
    <fieldset className={styles['piece']}>
      <legend>
        {piece.name} <span className="soft">{piece.planned}</span>
      </legend>
      <Fields>
        {piece.asks.map((field) => (
          <Field
            key={field}
            {...askedAs(field, piece)}
            name={`piece ${piece.item} ${field}`}
            value={typed[field]}
            onChange={(text) =>
              onChange({ ...draft, pieces: { ...draft.pieces, [piece.item]: { ...typed, [field]: text } } })
            }
            problems={problems}
            inputMode="decimal"
            isNarrow
            isFirst={startsHere && field === 'done'}
          />
        ))}
      </Fields>
    </fieldset>
  );
};

/** Bouts and drills: what was done of them, and what the machine and the pulse showed. */
export const PieceFields = ({ pieces, item, ...rest }: PieceFieldsProps) => (
  <>
    {pieces.map((piece) => (
      <Piece key={piece.item} piece={piece} startsHere={piece.item === item} {...rest} />
    ))}
  </>
);
