/** The pieces that pages are made of. */
export { Await, type AwaitProps } from './await.tsx';
export { Button, type ButtonProps } from './button.tsx';
export { dateInMonth, dateWithYear, longDate, monthOf, shortDate } from './dates.ts';
export { Actions, Dialog, type DialogProps } from './dialog.tsx';
export { Choice, type ChoiceProps, Field, type FieldProps, Fields } from './field.tsx';
export { Figure, type FigureProps } from './figure.tsx';
export { join } from './join.ts';
export { asTyped, showChange, showFraction, showIncrements } from './loads.ts';
export { Empty, Page, type PageProps, useTitle } from './page.tsx';
export { PersonFrame, type PersonFrameProps, type PersonTab } from './person-frame.tsx';
export { Problems, type ProblemsProps } from './problems.tsx';
export { useShortcut } from './shortcut.ts';
export { Table, type TableProps } from './table.tsx';
export { WorkingPanel } from './working-panel.tsx';
export { SignAs } from './sign-as.tsx';
export { useSigner, type Signing } from '../signer.tsx';
