import type { OutlinePart } from './outline.ts';

/** Every chapter is a kind of page of its own, so that its heading can run along the top of each of its sheets. */
export const pageStyles = (parts: readonly OutlinePart[]): string =>
  [
    ...parts.flatMap((part) =>
      part.chapters.map((chapter) =>
        page(chapter.anchor, `${part.number} ${part.heading}`, `${chapter.number} ${chapter.heading}`),
      ),
    ),
    page('sources', 'Evidence', 'Sources'),
  ].join('\n');

const page = (name: string, left: string, right: string): string =>
  `@media print { #${name} { page: ${name}; } }
@page ${name} {
  margin: 17mm 14mm 15mm;
  @top-left { content: ${quoted(left)}; ${HEAD} }
  @top-right { content: ${quoted(right)}; ${HEAD} }
  @bottom-left { content: "Ballast · Evidence"; ${HEAD} }
  @bottom-right { content: counter(page); ${HEAD} }
}`;

const HEAD = 'font: 8pt sans-serif; color: #333;';

const quoted = (text: string): string => `"${text.replaceAll(/["\\]/g, String.raw`\$&`)}"`;
