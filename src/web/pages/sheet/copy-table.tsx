import { useState } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { Button } from '../../parts/button.tsx';
import { sheetAsText } from './copy-text.ts';

export const CopyTable = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(sheetAsText(sheet)).then(
      () => setSaid('Copied.'),
      () => setSaid('The browser did not allow copying.'),
    );
  };
  return (
    <>
      <Button kind="link" onPress={copy}>
        Copy as a table
      </Button>
      <output className="soft small">{said}</output>
    </>
  );
};
