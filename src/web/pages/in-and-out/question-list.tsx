import { useState } from 'react';
import type { Question } from '#contract/bring-in.ts';
import { Button, Field } from '../../parts/parts.ts';
import styles from './in-and-out-page.module.css';

interface QuestionListProps {
  readonly questions: readonly Question[];
  readonly onAnswer: (id: string, answer: string | null) => void;
}

/** What the file does not say and nobody may guess. */
export function QuestionList({ questions, onAnswer }: QuestionListProps) {
  if (questions.length === 0) return null;
  const open = questions.filter(({ answer }) => answer === null).length;
  return (
    <section aria-label="Questions">
      <h3>
        Questions <span className="soft">{open === 0 ? 'all answered' : `${open} of ${questions.length} open`}</span>
      </h3>
      {questions.map((question) => (
        <QuestionFields key={question.id} question={question} onAnswer={(answer) => onAnswer(question.id, answer)} />
      ))}
    </section>
  );
}

interface QuestionFieldsProps {
  readonly question: Question;
  readonly onAnswer: (answer: string | null) => void;
}

function QuestionFields({ question, onAnswer }: QuestionFieldsProps) {
  const { id, asks, because, where, examples, choices, suggested, answer } = question;
  return (
    <fieldset
      className={answer === null ? styles['open'] : styles['answered']}
      data-answer={answer === null ? 'open' : 'given'}
    >
      <legend>{asks}</legend>
      <p className="soft small">
        {[where, because].filter(Boolean).join(': ')}
        {examples.length > 0 && ` Such as ${examples.join(', ')}.`}
      </p>
      {choices.map((choice) => (
        <label key={choice.answer} className={styles['choice']}>
          <input type="radio" name={id} checked={answer === choice.answer} onChange={() => onAnswer(choice.answer)} />
          <span>
            {choice.says}
            {choice.answer === suggested && <span className="soft"> (most likely)</span>}
          </span>
        </label>
      ))}
      {question.typed !== null && <TypedAnswer question={question} onAnswer={onAnswer} />}
      {answer !== null && (
        <Button kind="link" onPress={() => onAnswer(null)} label={`Ask again: ${asks}`}>
          ask again
        </Button>
      )}
    </fieldset>
  );
}

function TypedAnswer({ question: { typed, answer, choices }, onAnswer }: QuestionFieldsProps) {
  const given = choices.some((choice) => choice.answer === answer) ? '' : (answer ?? '');
  const [text, setText] = useState(given);
  return (
    <form
      className={styles['typed']}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') onAnswer(text.trim());
      }}
    >
      <Field
        label={`Or type ${typed ?? ''}`}
        type={typed === 'a number of repetitions' ? 'text' : 'date'}
        value={text}
        onChange={setText}
        isNarrow
      />
      <Button type="submit">Answer</Button>
    </form>
  );
}
