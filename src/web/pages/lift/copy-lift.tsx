import { useState } from 'react';
import type { LiftWindow } from '#contract/windows/lift-window.ts';
import { writeTabSeparated } from '../../parts/block/tab-separated.ts';
import { Button } from '../../parts/button.tsx';
import { liftRows } from './lift-columns.ts';

export const CopyLift = ({ lift }: { readonly lift: LiftWindow }) => {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(writeTabSeparated(liftRows(lift))).then(
      () => setSaid('Copied.'),
      () => setSaid('The browser did not allow copying.'),
    );
  };
  return (
    <>
      <Button onPress={copy}>Copy as a table</Button>
      <output className="soft small">{said}</output>
    </>
  );
};
