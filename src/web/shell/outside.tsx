import type { ReactNode } from 'react';
import styles from './outside.module.css';

/** The page before a house is open: the name and one column. */
export const Outside = ({ children }: { readonly children: ReactNode }) => (
  <main className={styles['outside']}>
    <p className={styles['name']}>Ballast</p>
    {children}
  </main>
);
