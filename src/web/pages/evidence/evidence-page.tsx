import { useEffect, useMemo, useState, useDeferredValue, type ClipboardEvent } from 'react';
import { ALL_CHECKS, ALL_SOURCES, PARTS } from '#science/textbook.ts';
import { Button, useTitle } from '../../parts/parts.ts';
import { useHouse } from '../../windows.ts';
import { byAuthor } from './by-author.ts';
import { ChapterSection } from './chapter-section.tsx';
import { CheckRunContext, useCheckRun } from './checks/check-run-context.ts';
import { Contents } from './contents.tsx';
import { copiedText } from './copied-text.ts';
import { useCurrentChapter } from './current-chapter.ts';
import { useDrawnGradually } from './drawn-gradually.ts';
import { ShownPerson } from './entries/screen-links.tsx';
import { Front } from './front.tsx';
import { outlineOf, recordOf, type OutlinePart } from './outline.ts';
import { pageStyles } from './page-styles.ts';
import { countOf, foundIn, foundSources, wordsOf } from './sought.ts';
import { SourcesSection } from './sources-section.tsx';
import styles from './evidence-page.module.css';

const OUTLINE = outlineOf(PARTS);
const SOURCES = byAuthor(ALL_SOURCES);

/** The textbook of every formula, method and table, each check computed anew while it is read. */
export default function EvidencePage() {
  useTitle('Evidence');
  const { data: house } = useHouse();
  const run = useCheckRun(ALL_CHECKS);
  const [sought, setSought] = useState('');
  const words = useDeferredValue(sought);
  const parts = useMemo(() => foundIn(OUTLINE, wordsOf(words)), [words]);
  const sources = useMemo(() => foundSources(SOURCES, wordsOf(words)), [words]);
  const chapters = useMemo(() => inOrder(parts), [parts]);
  const drawn = useDrawnGradually(chapters.length + 1, (id) => placeOf(chapters, id));
  const anchors = useMemo(() => [...chapters.map(({ chapter }) => chapter.anchor), 'sources'], [chapters]);
  usePageStyles();
  return (
    <CheckRunContext value={run}>
      <div className={styles['book']} onCopy={copyReadably}>
        <Front parts={OUTLINE} sources={SOURCES} onSeek={setSought} />
        <div className={styles['frame']}>
          <Contents
            parts={parts}
            sources={sources.length}
            sought={sought}
            onSeek={setSought}
            found={foundSays(words, parts, sources.length)}
            current={useCurrentChapter(anchors, drawn)}
          />
          <div className={styles['text']}>
            {chapters.length + sources.length === 0 && <NothingFound sought={words} onShowAll={() => setSought('')} />}
            <ShownPerson value={house?.people[0]?.id ?? null}>
              {chapters.slice(0, drawn).map(({ chapter, begins }) => (
                <ChapterSection key={chapter.anchor} chapter={chapter} begins={begins} />
              ))}
            </ShownPerson>
            {drawn > chapters.length && sources.length > 0 && <SourcesSection sources={sources} parts={OUTLINE} />}
          </div>
        </div>
      </div>
    </CheckRunContext>
  );
}

/** Chapters one after another, each first one with the part that it begins. */
const inOrder = (parts: readonly OutlinePart[]) =>
  parts.flatMap((part) => part.chapters.map((chapter, place) => ({ chapter, begins: place === 0 ? part : null })));

type InOrder = ReturnType<typeof inOrder>;

/** In which chapter an id stands; −1 where in none. The sources come last. */
const placeOf = (chapters: InOrder, id: string): number =>
  id === 'sources'
    ? chapters.length
    : chapters.findIndex(
        ({ chapter, begins }) =>
          chapter.anchor === id || begins?.anchor === id || chapter.entries.some((entry) => recordOf(entry).id === id),
      );

const foundSays = (words: string, parts: readonly OutlinePart[], sources: number): string => {
  if (wordsOf(words).length === 0) return '';
  const entries = countOf(parts);
  return `${entries} ${entries === 1 ? 'entry' : 'entries'} and ${sources} ${sources === 1 ? 'source' : 'sources'} found`;
};

function NothingFound({ sought, onShowAll }: { readonly sought: string; readonly onShowAll: () => void }) {
  return (
    <p>
      Nothing here holds “{sought}”.{' '}
      <Button kind="link" onPress={onShowAll}>
        Show all
      </Button>
    </p>
  );
}

const copyReadably = (event: ClipboardEvent): void => {
  const selection = document.getSelection();
  if (!selection || selection.rangeCount === 0) return;
  const text = copiedText(selection.getRangeAt(0).cloneContents());
  if (text === null) return;
  event.clipboardData.setData('text/plain', text);
  event.preventDefault();
};

/** Running heads of the printed book, while it is open. */
const usePageStyles = (): void => {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(pageStyles(OUTLINE));
    document.adoptedStyleSheets.push(sheet);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, []);
};
