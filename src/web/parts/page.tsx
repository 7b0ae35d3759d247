import { useEffect, type ReactNode } from 'react';
import styles from './page.module.css';

/** Names the browser's tab. */
export const useTitle = (title: string): void => {
  useEffect(() => {
    document.title = `${title} · Ballast`;
  }, [title]);
};

export interface PageProps {
  readonly title: string;
  /** One soft line beside the title. */
  readonly lead?: ReactNode;
  /** At the right end of the title's line. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

export const Page = ({ title, lead, aside, children }: PageProps) => {
  useTitle(title);
  return (
    <>
      <header className={styles['head']}>
        <h1>{title}</h1>
        {lead ? <div className="soft">{lead}</div> : null}
        {aside ? <div className={styles['aside']}>{aside}</div> : null}
      </header>
      {children}
    </>
  );
};

/** What a page says where it has nothing to show. */
export const Empty = ({ children }: { readonly children: ReactNode }) => <p className={styles['empty']}>{children}</p>;
