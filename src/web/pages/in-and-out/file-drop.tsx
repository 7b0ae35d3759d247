import { useId, useState } from 'react';
import { join } from '../../parts/parts.ts';
import styles from './in-and-out-page.module.css';

interface FileDropProps {
  readonly onFile: (file: File) => void;
  readonly isReading: boolean;
}

/** Choose a file, or drop it. */
export function FileDrop({ onFile, isReading }: FileDropProps) {
  const id = useId();
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null): void => {
    const [file] = files ?? [];
    if (file) onFile(file);
  };
  // Dropping is a second way beside the field, which the keyboard reaches.
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- see above
    <section
      aria-label="File"
      className={join(styles['drop'], isOver && styles['over'])}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer.files);
      }}
    >
      <label htmlFor={id}>Choose a CSV or XLSX file, or drop it here</label>
      <input
        id={id}
        type="file"
        accept=".csv,.tsv,.txt,.xlsx"
        disabled={isReading}
        onChange={(event) => {
          take(event.target.files);
          // The same file may be chosen again after it was mended.
          event.target.value = '';
        }}
      />
    </section>
  );
}
