import { lineAt, visit, type Source } from './source.ts';

const EMPTY_WORDS = /^(utils?|utilities|helpers?|commons?|managers?|services?|misc|stuff)$/;
const EMPTY_ENDING = /(Utils?|Helpers?|Managers?|Services?)$/;
const KEBAB_FILE = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*$/;
const KEBAB_FOLDER = /^[a-z0-9]+(-[a-z0-9]+)*$/;

const pathComplaint = (path: string): readonly string[] => {
  const parts = path.split('/');
  const file = parts.at(-1) ?? '';
  const words = parts.flatMap((part) => part.split(/[-.]/));
  const empty = words.filter((word) => EMPTY_WORDS.test(word));
  const crooked = !KEBAB_FILE.test(file) || parts.slice(0, -1).some((part) => !KEBAB_FOLDER.test(part));
  return [
    ...empty.map((word) => `${path} is named "${word}", which says nothing; name it for what it does.`),
    ...(file.startsWith('data.') || parts.slice(0, -1).includes('data')
      ? [`${path} is named "data", which says nothing; name what it holds.`]
      : []),
    ...(crooked ? [`${path} is not in kebab-case.`] : []),
  ];
};

const declarationComplaints = (source: Source): readonly string[] => {
  const complaints: string[] = [];
  const look = (node: { readonly name: string; readonly start: number } | null): void => {
    if (node && EMPTY_ENDING.test(node.name))
      complaints.push(
        `${source.path}:${lineAt(source.text, node.start)} declares ${node.name}; name it for what it does.`,
      );
  };
  visit(source, {
    ClassDeclaration: ({ id }) => look(id),
    FunctionDeclaration: ({ id }) => look(id),
    TSInterfaceDeclaration: ({ id }) => look(id),
    TSTypeAliasDeclaration: ({ id }) => look(id),
    VariableDeclarator: ({ id }) => look(id.type === 'Identifier' ? id : null),
  });
  return complaints;
};

/** Names that say nothing, in the path and in what a file declares. */
export const nameComplaints = (source: Source): readonly string[] => [
  ...pathComplaint(source.path),
  ...(/\.(tsx?|mjs)$/.test(source.path) ? declarationComplaints(source) : []),
];
