import type { MatchedColumn, Matching, MatchingByHand, TableReading } from '#contract/bring-in.ts';
import { Choice, Field, Fields, Table } from '../../parts/parts.ts';
import { useHouse } from '../../windows.ts';
import { meaningChoices, keyOfMeaning, meaningOfKey } from './column-meanings.ts';
import styles from './in-and-out-page.module.css';

interface ColumnMatchingProps {
  readonly reading: Extract<TableReading, { readonly kind: 'read' }>;
  readonly matching: Matching;
  readonly byHand: MatchingByHand;
  readonly onMatch: (byHand: MatchingByHand) => void;
}

/** What each column was taken for, and the choice to take it for something else. */
export function ColumnMatching({ reading, matching, byHand, onMatch }: ColumnMatchingProps) {
  return (
    <>
      <Fields>
        {reading.sheets.length > 1 && (
          <Choice
            label="Sheet"
            value={matching.sheet}
            onChange={(sheet) => onMatch({ sheet, headerRow: null, columns: {} })}
            options={reading.sheets.map(({ name }) => ({ value: name, label: name }))}
          />
        )}
        <Field
          label="Row of the headers"
          value={matching.headerRow === null ? '' : String(matching.headerRow)}
          onChange={(text) => {
            const row = Number(text);
            if (Number.isInteger(row) && row > 0) onMatch({ ...byHand, headerRow: row, columns: {} });
          }}
          inputMode="numeric"
          isNarrow
        />
      </Fields>
      <Table caption="Columns">
        <thead>
          <tr>
            <th scope="col">column</th>
            <th scope="col">header</th>
            <th scope="col">such as</th>
            <th scope="col">taken for</th>
            <th scope="col">by</th>
          </tr>
        </thead>
        <tbody>
          {matching.columns.map((column) => (
            <ColumnRow
              key={column.letter}
              column={column}
              onMeaning={(meaning) => onMatch({ ...byHand, columns: { ...byHand.columns, [column.letter]: meaning } })}
            />
          ))}
        </tbody>
      </Table>
    </>
  );
}

interface ColumnRowProps {
  readonly column: MatchedColumn;
  readonly onMeaning: (meaning: MatchedColumn['meaning']) => void;
}

function ColumnRow({ column, onMeaning }: ColumnRowProps) {
  const exercises = useHouse().data?.exercises ?? [];
  const choices = meaningChoices(exercises);
  return (
    <tr>
      <th scope="row">{column.letter}</th>
      <td>{column.header || <span className="faint">no header</span>}</td>
      <td className="soft">{column.examples.join(' · ')}</td>
      <td className={styles['meaning']}>
        <select
          aria-label={`Column ${column.letter} ${column.header} is`}
          value={keyOfMeaning(column.meaning)}
          onChange={(event) => onMeaning(meaningOfKey(event.target.value, column.meaning, exercises))}
        >
          {choices.map(({ label, options }) => (
            <optgroup key={label} label={label}>
              {options.map((option) => (
                <option key={option.value} value={option.value}>
                  {option.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </td>
      <td className="soft">{column.by}</td>
    </tr>
  );
}
