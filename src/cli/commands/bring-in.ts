import { DATA_OPTIONS, failed, needed, optional, type Command } from '../command.ts';
import { bringInFile } from '../bring-in-file.ts';
import { signerNamed } from '../find-by-name.ts';
import { readAnswers } from '../read-answers.ts';
import { snapshotNow, withData } from '../with-data.ts';

export const bringInCommand: Command = {
  name: 'bring-in',
  summary: 'Shows what a CSV or XLSX file of people, missions or tests would record; with --take records it.',
  options: [
    needed('file', 'FILE', 'the table'),
    needed('signer', 'NAME', 'who brings it in'),
    optional('answers', 'FILE', 'JSON with answers to what the file does not say'),
    optional('take', null, 'record it: all or nothing'),
    ...DATA_OPTIONS,
  ],
  run: (given, world) =>
    withData(given, world, async (keeping) => {
      const signer = signerNamed(snapshotNow(keeping), given['signer'] ?? '');
      if (signer.kind === 'none') return failed(signer.says);
      const reading = await readAnswers(given['answers'], world);
      if (reading.kind === 'wrong') return failed(reading.says);
      return bringInFile(keeping.workplace, world, {
        path: given['file'] ?? '',
        signer: signer.thing.id,
        answers: reading.answers,
        take: given['take'] !== undefined,
      });
    }),
};
