import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { problemsOf } from '../api.ts';
import { Actions } from './dialog.tsx';
import { Button } from './button.tsx';
import { Problems } from './problems.tsx';

export interface AwaitProps<Window> {
  readonly query: UseQueryResult<Window>;
  readonly children: (window: Window) => ReactNode;
}

/** A window when it is there; until then a word, and the reason where it cannot be had. */
export const Await = <Window,>({ query, children }: AwaitProps<Window>) => {
  if (query.data !== undefined) return children(query.data);
  if (query.isError)
    return (
      <>
        <Problems problems={problemsOf(query.error)} />
        <Actions>
          <Button onPress={() => void query.refetch()}>Ask again</Button>
        </Actions>
      </>
    );
  return <output className="soft">Reading …</output>;
};
