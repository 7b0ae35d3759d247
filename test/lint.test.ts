import { execFile } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from './architecture/source.ts';

/**
 * A tool that is set up wrongly is silent. Here each rule that the house rests on meets one fault that only this rule
 * finds, in a small project of its own with the real settings.
 */
const FAULTS = [
  { rule: 'no-floating-promises', at: 'src/server/a.ts', text: 'const f = async () => {};\nf();' },
  { rule: 'no-misused-promises', at: 'src/server/b.ts', text: '[1].forEach(async () => { await null; });' },
  {
    rule: 'switch-exhaustiveness-check',
    at: 'src/planning/a.ts',
    text: "export const f = (k: 'a' | 'b') => { switch (k) { case 'a': return 1; } return 2; };",
  },
  { rule: 'no-explicit-any', at: 'src/domain/a.ts', text: 'export const f = (x: any) => typeof x;' },
  { rule: 'no-unsafe-assignment', at: 'src/domain/b.ts', text: "const x = JSON.parse('1');\nexport { x };" },
  { rule: 'no-unsafe-return', at: 'src/domain/c.ts', text: "export const f = (): string => JSON.parse('1');" },
  { rule: 'no-unsafe-member-access', at: 'src/domain/d.ts', text: "export const f = String(JSON.parse('1').x);" },
  { rule: 'no-non-null-assertion', at: 'src/domain/e.ts', text: 'export const f = (x: string | null) => x!.length;' },
  { rule: 'require-array-sort-compare', at: 'src/science/a.ts', text: 'export const f = (x: number[]) => x.sort();' },
  { rule: 'no-restricted-properties', at: 'src/science/b.ts', text: 'export const f = () => Date.now();' },
  { rule: 'no-restricted-properties', at: 'src/units/a.ts', text: 'export const f = () => Math.random();' },
  { rule: 'no-console', at: 'src/storage/a.ts', text: 'console.log(1);' },
  { rule: 'ban-ts-comment', at: 'src/units/b.ts', text: '// @ts-ignore\nexport const x: number = 1;' },
  { rule: 'eqeqeq', at: 'src/units/c.ts', text: 'export const f = (x: string) => x == "";' },
  {
    rule: 'rules-of-hooks',
    at: 'src/web/a.tsx',
    text: "import { useState } from 'react';\nexport const F = (p: { a: boolean }) => { if (p.a) useState(1); return null; };",
  },
  {
    rule: 'alt-text',
    at: 'src/web/b.tsx',
    text: 'export const F = () => <img src="a.png" />;',
  },
  {
    rule: 'no-focused-tests',
    at: 'src/units/d.test.ts',
    text: "import { expect, test } from 'vitest';\ntest.only('x', () => { expect(1).toBe(1); });",
  },
  {
    rule: 'no-disabled-tests',
    at: 'src/units/e.test.ts',
    text: "import { expect, test } from 'vitest';\ntest.skip('x', () => { expect(1).toBe(1); });",
  },
] as const;

const CLEAN = [
  { at: 'src/main/clock.ts', text: 'export const now = (): number => Date.now();\nconsole.log(now());\n' },
  { at: 'src/units/day.ts', text: 'export const year = (ms: number): number => new Date(ms).getUTCFullYear();\n' },
] as const;

/** Faults of purity that the compiler refuses in a pure folder, since neither browser nor Node exists there. */
const IMPURE = ['document.title', 'process.env', 'console.log(1)', "fetch('/')", 'setTimeout(() => 0, 1)'] as const;

let folder = '';

const write = (at: string, text: string): void => {
  mkdirSync(join(folder, dirname(at)), { recursive: true });
  writeFileSync(join(folder, at), text);
};

/** Runs a tool of the project in the small project; what it prints counts, not how it ends. */
const printedBy = (tool: string, given: readonly string[]): Promise<string> =>
  new Promise((resolve) => {
    execFile(process.execPath, [join(ROOT, 'node_modules', tool), ...given], { cwd: folder }, (_, printed) =>
      resolve(printed),
    );
  });

interface Diagnostic {
  readonly code: string;
  readonly filename: string;
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-lint-'));
  for (const name of ['.oxlintrc.json', 'tsconfig.base.json', 'tsconfig.pure.json'])
    copyFileSync(join(ROOT, name), join(folder, name));
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const options = { jsx: 'react-jsx', types: ['node'], lib: ['es2023', 'dom'] };
  write(
    'tsconfig.json',
    JSON.stringify({ extends: './tsconfig.base.json', compilerOptions: options, include: ['src'] }),
  );
  for (const { at, text } of [...FAULTS, ...CLEAN]) write(at, text);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('lint', () => {
  let diagnostics: readonly Diagnostic[] = [];
  beforeAll(async () => {
    const printed = await printedBy('oxlint/bin/oxlint', ['--format=json']);
    ({ diagnostics } = JSON.parse(printed) as { readonly diagnostics: readonly Diagnostic[] });
  });

  const rulesAt = (at: string): readonly string[] =>
    diagnostics.filter(({ filename }) => filename.endsWith(at)).map(({ code }) => /\((.+)\)/.exec(code)?.[1] ?? code);

  test.each(FAULTS)('$rule finds the fault in $at', ({ rule, at }) => {
    expect(rulesAt(at)).toContain(rule);
  });

  test.each(CLEAN)('$at has none', ({ at }) => {
    expect(rulesAt(at)).toEqual([]);
  });
});

describe('the compiler', () => {
  test.each(IMPURE)('knows no %s in a pure folder', async (use) => {
    const [name = ''] = /^\w+/.exec(use) ?? [];
    write('src/science/impure.ts', `export const impure = (): unknown => ${use};\n`);
    const printed = await printedBy('typescript/bin/tsc', ['-p', 'tsconfig.pure.json']);
    expect(printed).toMatch(new RegExp(`impure\\.ts.*Cannot find name '${name}'`));
  });
});
