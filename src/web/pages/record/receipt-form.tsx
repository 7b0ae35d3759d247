import { useState } from 'react';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import { cardCode } from '#domain/card-code.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { isoOfDay } from '#units/day.ts';
import { Choice, Empty, Field, Fields, longDate } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { chosenFrom, typedDay, typedWords } from './typed-values.ts';

/** That a card, or its recall, is known to have arrived. */
export function ReceiptForm({
  record,
  person,
  house,
  correcting,
  onDone,
}: FormProps<'received'> & { readonly record: RecordWindow }) {
  const form = useFactForm(correcting, onDone);
  const cards = issuedCards(record);
  const [card, setCard] = useState<string>(correcting?.card ?? '');
  const [what, setWhat] = useState<string>(correcting?.what ?? 'card');
  const [how, setHow] = useState(correcting?.how ?? '');
  const [on, setOn] = useState(isoOfDay(correcting?.on ?? house.today));
  const build: Build = (problems) => {
    const found = chosenFrom(cards, card, 'card', problems);
    const by = typedWords(how, 'how', problems);
    const day = typedDay(on, 'on', problems);
    if (!found || by === null || day === null) return null;
    return [
      { kind: 'received', person, card: found.id, what: what === 'recall' ? 'recall' : 'card', how: by, on: day },
    ];
  };
  if (cards.length === 0) return <Empty>No card has been issued yet: there is nothing to receive.</Empty>;
  return (
    <FactForm form={form} build={build} fields={['card', 'how', 'on']} correcting={correcting} onCancel={onDone}>
      <Choice
        label="Card"
        name="card"
        value={card}
        onChange={setCard}
        options={cards.map((each) => ({
          value: each.id,
          label: `${cardCode(each.digest)}: ${longDate(each.card.day)}, ${each.card.title}`,
        }))}
        nothing="choose …"
        problems={form.problems}
      />
      <Fields>
        <Choice
          label="What arrived"
          value={what}
          onChange={setWhat}
          options={[
            { value: 'card', label: 'the card' },
            { value: 'recall', label: 'word that it is recalled' },
          ]}
        />
        <Field
          label="How"
          name="how"
          value={how}
          onChange={setHow}
          problems={form.problems}
          placeholder="read back over voice"
        />
        <Field label="On" name="on" type="date" value={on} onChange={setOn} problems={form.problems} />
      </Fields>
    </FactForm>
  );
}

/** Newest day first. */
const issuedCards = ({ lines }: RecordWindow): readonly IssuedCard[] =>
  lines
    .flatMap(({ fact }) => (fact.kind === 'decided' && fact.decision.kind === 'issue' ? [fact.decision.card] : []))
    .toSorted((a, b) => b.card.day - a.card.day);
