import { useState } from 'react';
import { Button, type ButtonProps } from './button.tsx';

export interface CopyButtonProps extends Pick<ButtonProps, 'children' | 'kind' | 'isFirst'> {
  /** Made when it is asked for: a whole sheet is not written out at every stroke. */
  readonly text: () => string;
  /** What is left to do where the browser keeps the clipboard shut. */
  readonly orElse?: string;
}

/** Puts a text on the clipboard, and says whether that went well. */
export const CopyButton = ({
  text,
  orElse = 'allow the clipboard for this page and copy again',
  ...button
}: CopyButtonProps) => {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(text()).then(
      () => setSaid('Copied.'),
      () => setSaid(`The browser did not allow copying: ${orElse}.`),
    );
  };
  return (
    <>
      <Button {...button} onPress={copy} /> <output className="soft small">{said}</output>
    </>
  );
};
