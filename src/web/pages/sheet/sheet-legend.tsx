import styles from './panel.module.css';

/** What the signs of the grid mean, and its keys. */
export const SheetLegend = ({ unit }: { readonly unit: string }) => (
  <details className={styles['legend']}>
    <summary>Signs and keys</summary>
    <p>
      Loads in {unit} as the machine shows them. Planned over done; after the point, effort as RPE; ● unread note, ○
      read; hurt: discomfort of 10, with its side. Pale blue can be issued; hatched was called off; barred was not
      heard; a dotted line under what was written for its day; a full line under what was done otherwise than planned. ↑
      goes up when it is signed; ⊤ is held by a limit.
    </p>
    <p>
      Arrows move, from block to block too, with <kbd>Ctrl</kbd> to the next cell of a session, with <kbd>Shift</kbd>{' '}
      over a range of a block; <kbd>Home</kbd> and <kbd>End</kbd> to the ends of the row; <kbd>Enter</kbd> opens, a
      digit or <kbd>E</kbd> writes, <kbd>Ctrl R</kbd> fills right, <kbd>Ctrl C</kbd> and <kbd>Ctrl V</kbd> to and from a
      spreadsheet, <kbd>W</kbd> copies the week into the next, <kbd>X</kbd> leaves out, <kbd>Delete</kbd> goes back to
      the programme, <kbd>Ctrl Z</kbd> takes back; <kbd>H</kbd> hold, <kbd>B</kbd> back off 10 %, <kbd>K</kbd> keep
      whatever the time, <kbd>I</kbd> issue, <kbd>N</kbd> next person.
    </p>
  </details>
);
