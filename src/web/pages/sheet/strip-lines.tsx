import type { Day } from '#units/day.ts';
import type { SheetStrip, SheetWindow } from '#contract/windows/sheet-window.ts';
import { join } from '../../parts/join.ts';
import { byAge, saidTogether, whenOf } from './strip-text.ts';
import styles from './strips.module.css';

type Span = SheetStrip['spans'][number];

const SIGNS = { plain: '', caution: '▲ ', stop: '■ ' } as const;

interface Days {
  readonly today: Day;
  readonly last: Day;
}

const SpanText = ({ span, today, last }: { readonly span: Span } & Days) => {
  const when = whenOf(span, today, last);
  return (
    <span className={join(styles['span'], styles[span.tone], span.to < today && styles['gone'])}>
      {SIGNS[span.tone] === '' ? null : <span aria-hidden="true">{SIGNS[span.tone]}</span>}
      {span.says.replace(/\.$/, '')}
      {when === '' ? '' : `, ${when}`}
    </span>
  );
};

const Strip = ({ strip: { label, spans }, today, last }: { readonly strip: SheetStrip } & Days) => {
  const { now, earlier } = byAge(saidTogether(spans, today), today);
  const shown = (each: readonly Span[]) =>
    each.map((span) => <SpanText key={`${span.from} ${span.to} ${span.says}`} span={span} today={today} last={last} />);
  return (
    <div>
      <dt>{label}</dt>
      <dd>
        {shown(now)}
        {earlier.length === 0 ? null : (
          <details>
            <summary>{earlier.length} earlier</summary>
            {shown(earlier)}
          </details>
        )}
      </dd>
    </div>
  );
};

/** What lies over the sessions, once above all of them: phases, restrictions, machines out. What says nothing is not drawn. */
export const StripLines = ({ sheet: { strips, columns, today } }: { readonly sheet: SheetWindow }) => (
  <dl className={styles['strips']}>
    {strips.map((strip) => (
      <Strip key={strip.label} strip={strip} today={today} last={columns.at(-1)?.day ?? today} />
    ))}
  </dl>
);
