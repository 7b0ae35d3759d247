import { useMemo, useRef, useState } from 'react';
import { ComboBox, Input, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { useLocation } from 'wouter';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { useShortcut } from '../parts/shortcut.ts';
import { findings } from './findings.ts';
import styles from './find-box.module.css';

/** Goes to a person, an exercise or a card by typing; the key "/" leads here. */
export const FindBox = ({ house }: { readonly house: HouseWindow }) => {
  const [location, go] = useLocation();
  const [typed, setTyped] = useState('');
  const input = useRef<HTMLInputElement>(null);
  const found = useMemo(() => findings(house, location, typed), [house, location, typed]);
  useShortcut('/', () => input.current?.focus());
  const choose = (key: unknown): void => {
    const finding = found.find(({ id }) => id === key);
    if (!finding) return;
    setTyped('');
    go(finding.path);
  };
  return (
    <ComboBox
      className={styles['find'] ?? ''}
      aria-label="Find a person, an exercise or a card"
      items={found}
      inputValue={typed}
      onInputChange={setTyped}
      value={null}
      onChange={choose}
      allowsCustomValue
      menuTrigger="input"
    >
      <Input ref={input} placeholder="Find a person, exercise, card  /" />
      <Popover className={styles['list'] ?? ''} offset={2}>
        <ListBox<(typeof found)[number]>>
          {({ id, name, kind }) => (
            <ListBoxItem id={id} textValue={name} className={styles['item'] ?? ''}>
              {name} <span className="soft small">{kind}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
};
