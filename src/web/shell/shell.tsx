import { useEffect, useRef, type ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { FindBox } from './find-box.tsx';
import { SignerChoice } from './signer-choice.tsx';
import styles from './shell.module.css';

const PAGES = [
  { name: 'Desk', path: '/' },
  { name: 'Programmes', path: '/programmes' },
  { name: 'Evidence', path: '/evidence' },
  { name: 'In and out', path: '/in-and-out' },
  { name: 'Settings', path: '/settings' },
] as const;

const Navigation = () => {
  const [location] = useLocation();
  return (
    <nav className={styles['pages']} aria-label="Pages">
      {PAGES.map(({ name, path }) => (
        <Link key={path} href={path} aria-current={location === path ? 'page' : undefined}>
          {name}
        </Link>
      ))}
    </nav>
  );
};

/** After going to another page reading starts at its top, not where the last one was left. */
const useStartAtTop = () => {
  const [location] = useLocation();
  const main = useRef<HTMLElement>(null);
  const last = useRef(location);
  useEffect(() => {
    if (last.current === location) return;
    last.current = location;
    window.scrollTo(0, 0);
    main.current?.focus({ preventScroll: true });
  }, [location]);
  return main;
};

export const Shell = ({ house, children }: { readonly house: HouseWindow; readonly children: ReactNode }) => {
  const main = useStartAtTop();
  return (
    <>
      <a className={styles['skip']} href="#main">
        Skip to the page
      </a>
      <header className={`${styles['head'] ?? ''} on-screen`}>
        <Link className={styles['name']} href="/">
          Ballast
        </Link>
        <Navigation />
        <div className={styles['tools']}>
          <FindBox house={house} />
          <SignerChoice />
        </div>
      </header>
      {house.about === 'scenario' ? (
        <p className={`${styles['invented'] ?? ''} on-screen`}>
          Invented scenario: every person, place and number in it is made up.
        </p>
      ) : null}
      <main id="main" className={styles['main']} ref={main} tabIndex={-1}>
        {children}
      </main>
      <footer className={`${styles['foot'] ?? ''} on-screen`}>
        Advice for supervised training; the physician’s word comes first.
      </footer>
    </>
  );
};
