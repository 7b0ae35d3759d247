import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Rows } from '#planning/rows.ts';
import { roundedLoad } from '#units/rounding.ts';
import { FLIGHT_SET_PLACES } from '#planning/flight-set.ts';
import { measure, measured, present, ratioOf } from './measure.ts';

/** The arithmetic of 34,560 sets, once in reckonings and once as a spreadsheet that LibreOffice recalculates on loading. */
const FLIGHT = { gravity: '0 g' } as const;
const SETS = 34_560;
const STEP = 5 * 0.45359237;
const CEILING = 600 * 0.45359237;

const maximumOf = (set: number): number => 80 + (set % 97);

const reckon = (): number => {
  const rows = new Rows();

  let total = 0;
  for (let set = 0; set < SETS; set += 1) {
    const row = rows.add(FLIGHT, [0.9, 0.78, maximumOf(set), 0.8, 0.7175, 0.7175, 75, 0]);
    const steps = roundedLoad(rows.at(row, FLIGHT_SET_PLACES.target), [CEILING, 230], STEP, 20 * 0.45359237) ?? 0;
    rows.setLoad(FLIGHT, row, steps * STEP);
    total += rows.at(row, FLIGHT_SET_PLACES.trueFraction);
  }
  return total;
};

const cell = (formula: string): string => `<table:table-cell table:formula="of:=${formula}"/>`;
const value = (number: number): string => `<table:table-cell office:value-type="float" office:value="${number}"/>`;

const rowOf = (set: number): string => {
  const at = set + 1;
  return `<table:table-row>${value(maximumOf(set))}${[
    `0.9*0.78*[.A${at}]`,
    `0.8*0.7175*75`,
    `[.B${at}]+[.C${at}]`,
    `ROUNDUP([.D${at}]/${STEP}-0.5;0)`,
    `MIN([.E${at}];INT(${CEILING}/${STEP});INT(230/${STEP}))`,
    `[.F${at}]*${STEP}`,
    `[.D${at}]-[.G${at}]`,
    `[.G${at}]-0.7175*75`,
    `[.I${at}]/[.A${at}]`,
    `[.G${at}]/[.B${at}]-1`,
  ]
    .map(cell)
    .join('')}</table:table-row>`;
};

const sheet = (sets: number): string =>
  `<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="sets">${Array.from({ length: sets }, (_, set) => rowOf(set)).join('')}</table:table></office:spreadsheet></office:body></office:document>`;

const folder = mkdtempSync(join(tmpdir(), 'ballast-bench-'));
const timeOf = (sets: number): number => {
  const file = join(folder, `sets-${sets}.fods`);
  writeFileSync(file, sheet(sets));
  const started = performance.now();
  execFileSync(
    'soffice',
    [`-env:UserInstallation=file://${folder}/profile`, '--headless', '--convert-to', 'csv', '--outdir', folder, file],
    { stdio: 'ignore' },
  );
  return performance.now() - started;
};

try {
  timeOf(1);
  const recalculated = [0, 1, 2].map(() => timeOf(SETS) - timeOf(1));
  const ours = await measure(`${SETS} sets in reckonings, every working kept`, reckon, { aimMilliseconds: 30 });
  present('The same arithmetic in a spreadsheet', [
    ratioOf(
      'LibreOffice (load, recalculate, write; start-up subtracted) against reckonings',
      measured('LibreOffice, start-up subtracted', recalculated),
      ours,
    ),
  ]);
} catch (fault) {
  console.log(
    `LibreOffice is not to be had here (soffice): ${fault instanceof Error ? fault.message.split('\n')[0] : String(fault)}. Install libreoffice-calc to compare.`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
