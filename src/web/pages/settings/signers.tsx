import { useState } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Signer } from '#domain/fact.ts';
import { Button, dateWithYear, Dialog, Table } from '../../parts/parts.ts';
import { SignerForm } from './signer-form.tsx';

/** Whose names go under what is written. */
export function Signers({ house }: { readonly house: HouseWindow }) {
  const [isAdding, setAdding] = useState(false);
  const nameOf = (id: Signer['signsFor']): string => house.signers.find((signer) => signer.id === id)?.name ?? '';
  return (
    <section aria-label="Signers">
      <h2>Signers</h2>
      <Table caption="Who signs here" isCaptionHidden isWide={false}>
        <thead>
          <tr>
            <th scope="col">name</th>
            <th scope="col">role</th>
            <th scope="col">signs for</th>
            <th scope="col">from</th>
            <th scope="col">until</th>
          </tr>
        </thead>
        <tbody>
          {house.signers.map((signer) => (
            <tr key={signer.id}>
              <th scope="row">{signer.name}</th>
              <td>{signer.role}</td>
              <td>{signer.signsFor === null ? '–' : nameOf(signer.signsFor)}</td>
              <td>{signer.from === null ? '–' : dateWithYear(signer.from)}</td>
              <td>{signer.until === null ? '–' : dateWithYear(signer.until)}</td>
            </tr>
          ))}
        </tbody>
      </Table>
      <Button onPress={() => setAdding(true)}>Add a signer or deputy</Button>
      <Dialog title="Add a signer or deputy" isOpen={isAdding} onClose={() => setAdding(false)}>
        <SignerForm house={house} onDone={() => setAdding(false)} />
      </Dialog>
    </section>
  );
}
