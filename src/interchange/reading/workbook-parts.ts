import { attribute, xmlPieces } from './xml-pieces.ts';

/** The parts of a workbook that a table is read from, as texts. */
export interface WorkbookParts {
  readonly countsFrom1904: boolean;
  readonly sheets: readonly { readonly name: string; readonly xml: string }[];
  readonly sharedStrings: string | null;
  readonly styles: string | null;
}

interface Relation {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
}

const id = attribute('Id');
const type = attribute('Type');
const target = attribute('Target');
const sheetName = attribute('name');
const relationId = attribute('id');
const date1904 = attribute('date1904');

const WORKBOOK = 'xl/workbook.xml';
const RELATIONS = 'xl/_rels/workbook.xml.rels';

/** The list of sheets and parts is short; a longer one is none. */
const LONGEST_LIST = 1_000_000;

const textOf = (entries: ReadonlyMap<string, Uint8Array>, path: string): string | null => {
  const content = entries.get(path);
  return content ? new TextDecoder().decode(content) : null;
};

const relationsIn = (xml: string): readonly Relation[] =>
  [...xmlPieces(xml)].flatMap((piece) => {
    if (piece.kind !== 'opens' || piece.name !== 'Relationship') return [];
    const to = target(piece.attributes) ?? '';
    return [
      {
        id: id(piece.attributes) ?? '',
        kind: (type(piece.attributes) ?? '').split('/').at(-1) ?? '',
        path: to.startsWith('/') ? to.slice(1) : `xl/${to}`,
      },
    ];
  });

/** The parts that make up the tables of a workbook; null where the archive is none. */
export const workbookParts = (entries: ReadonlyMap<string, Uint8Array>): WorkbookParts | null => {
  const workbook = textOf(entries, WORKBOOK);
  const related = textOf(entries, RELATIONS) ?? '';
  if (workbook === null || workbook.length > LONGEST_LIST || related.length > LONGEST_LIST) return null;
  const relations = relationsIn(related);
  const part = (kind: string): string | null => {
    const relation = relations.find((one) => one.kind === kind);
    return relation ? textOf(entries, relation.path) : null;
  };
  const opened = [...xmlPieces(workbook)].flatMap((piece) => (piece.kind === 'opens' ? [piece] : []));
  const sheets = opened.flatMap(({ name, attributes }) => {
    if (name !== 'sheet') return [];
    const relation = relations.find((one) => one.kind === 'worksheet' && one.id === relationId(attributes));
    const xml = relation ? textOf(entries, relation.path) : null;
    return xml === null ? [] : [{ name: sheetName(attributes) ?? '', xml }];
  });
  return {
    countsFrom1904: opened.some(
      ({ name, attributes }) => name === 'workbookPr' && /^(1|true)$/.test(date1904(attributes) ?? ''),
    ),
    sheets,
    sharedStrings: part('sharedStrings'),
    styles: part('styles'),
  };
};
