import { AUDIENCES, type Audience } from '#domain/fact.ts';
import { instant } from '#domain/identity.ts';
import { exportFacts, exportReveals } from '#actions/export-facts.ts';
import { DATA_OPTIONS, done, failed, needed, optional, type Command } from '../command.ts';
import { problemLines, withData } from '../with-data.ts';

export const backup: Command = {
  name: 'backup',
  summary: 'Writes a verified copy of the data under a new name.',
  options: [optional('to', 'FILE', 'where to; else beside the data'), ...DATA_OPTIONS],
  run: (given, world) =>
    withData(given, world, async ({ backUp }) => {
      const report = await backUp(given['to'] ?? null);
      return report.kind === 'written'
        ? done(`${report.facts} facts, ${report.bytes} bytes in ${report.path}.`)
        : failed(...problemLines([report.problem]));
    }),
};

export const restore: Command = {
  name: 'restore',
  summary: 'Puts a backup in the place of the data; what was there is kept beside it.',
  options: [needed('from', 'FILE', 'the backup'), ...DATA_OPTIONS],
  run: async (given, world) => {
    const report = await world.restore(given, given['from'] ?? '');
    if (report.kind === 'refused') return failed(...problemLines([report.problem]));
    const kept = report.kept === null ? '' : ` What was there before is kept in ${report.kept}.`;
    return done(`${report.facts} facts restored.${kept}`);
  },
};

export const check: Command = {
  name: 'check',
  summary: 'Reads everything once more from the disk and checks every digest.',
  options: DATA_OPTIONS,
  run: (given, world) =>
    withData(given, world, async ({ workplace }) => {
      const report = await workplace.store.checkIntegrity();
      return report.kind === 'sound'
        ? done(`${report.facts} facts, every digest right.`)
        : failed(...problemLines([report.problem]));
    }),
};

const isAudience = (text: string | undefined): text is Audience => AUDIENCES.some((audience) => audience === text);

export const exportAll: Command = {
  name: 'export',
  summary: 'Says what an export for an audience reveals; with --to writes it as JSON.',
  options: [
    needed('audience', 'WHO', AUDIENCES.map((audience) => `"${audience}"`).join(', ')),
    optional('to', 'FILE', 'where to'),
    ...DATA_OPTIONS,
  ],
  run: (given, world) =>
    withData(given, world, async ({ workplace: { store } }) => {
      const { audience, to } = given;
      if (!isAudience(audience)) return failed(`No audience "${audience}": choose one of ${AUDIENCES.join(', ')}.`);
      const { facts, people, kinds, reasonsCutOut } = exportReveals(store.facts(), audience);
      const lines = [
        `For ${audience}: ${facts} facts about ${people} people.`,
        ...kinds.map(({ kind, count }) => `  ${kind}: ${count}`),
        ...(reasonsCutOut > 0 ? [`  Medical reasons cut out: ${reasonsCutOut}`] : []),
      ];
      if (to === undefined) return done(...lines, 'Add --to FILE to write it.');
      const from = { database: store.databaseId, about: store.about.kind, madeAt: instant(world.madeAt()) };
      const written = await world.writeFile(to, JSON.stringify(exportFacts(store.facts(), audience, from), null, 1));
      return written.kind === 'file' ? done(...lines, `Written to ${to}.`) : failed(written.says);
    }),
};
