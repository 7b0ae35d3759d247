import { lineAt, visit, type Source } from './source.ts';

export const LONGEST_FILE = 400;
export const LONGEST_FUNCTION = 60;

/** Nine files in ten are shorter than this. */
export const MOST_FILES_UNDER = 200;

/** Rows of facts are not read like a program. */
const isTable = ({ path }: Source): boolean => /\.table\.tsx?$/.test(path);

export const linesOf = ({ text }: Source): number => text.replace(/\n$/, '').split('\n').length;

export const fileSizeComplaints = (source: Source): readonly string[] =>
  !isTable(source) && linesOf(source) > LONGEST_FILE
    ? [`${source.path} has ${linesOf(source)} lines; no file has over ${LONGEST_FILE}: take a concept out of it.`]
    : [];

/** The number of lines that a share of the files does not exceed. */
export const linesAtShare = (sources: readonly Source[], share: number): number => {
  const lengths = sources
    .filter((source) => !isTable(source))
    .map(linesOf)
    .sort((a, b) => a - b);
  return lengths[Math.ceil(lengths.length * share) - 1] ?? 0;
};

/** Functions longer than they may be, each as a sentence. */
export const functionSizeComplaints = (source: Source): readonly string[] => {
  const complaints: string[] = [];
  const look = ({ start, end }: { readonly start: number; readonly end: number }): void => {
    const [first, last] = [lineAt(source.text, start), lineAt(source.text, end)];
    const lines = last - first + 1;
    if (lines > LONGEST_FUNCTION)
      complaints.push(
        `${source.path}:${first} holds a function of ${lines} lines; none has over ${LONGEST_FUNCTION}: ` +
          'take a step out of it and name it.',
      );
  };
  visit(source, { FunctionDeclaration: look, FunctionExpression: look, ArrowFunctionExpression: look });
  return complaints;
};
