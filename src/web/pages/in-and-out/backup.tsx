import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import { Button, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useWrite } from '../../windows.ts';

interface Written {
  readonly path: string;
  readonly bytes: number;
  readonly facts: number;
}

/** A whole copy of the data file, checked after it was written. */
export function Backup() {
  const { signer } = useSigner();
  const write = useWrite<Written>();
  const [written, setWritten] = useState<Written | null>(null);
  return (
    <section aria-label="Backup">
      <h2>Backup</h2>
      <p className="soft">
        A whole copy of the data file beside it, with every digest checked. It holds everything, medical reasons
        included: keep it where the data file may be kept.
      </p>
      <Problems problems={write.problems} />
      <Button
        isDisabled={signer === null || write.isSending}
        onPress={() => {
          if (signer !== null) write.send(ROUTES.backup, { signer: signer.id }, setWritten);
        }}
      >
        Write a backup
      </Button>{' '}
      <SignAs />
      {written !== null && (
        <p>
          <output>
            Written: <b>{written.facts} facts</b>, {Math.ceil(written.bytes / 1000)} kB, to {written.path}
          </output>
        </p>
      )}
    </section>
  );
}
