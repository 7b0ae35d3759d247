import { Link } from 'wouter';
import type { CapacityLift, CapacityWindow } from '#contract/windows/capacity-window.ts';
import { intervalOf } from '#domain/estimate.ts';
import { daysBetween, type Day } from '#units/day.ts';
import { join, Table } from '../../parts/parts.ts';
import styles from './capacity-page.module.css';

/** Every lift with its estimate, the interval around it, its age and what it rests on. */
export function CapacityTable({
  capacity,
  chosen,
}: {
  readonly capacity: CapacityWindow;
  readonly chosen: string | null;
}) {
  return (
    <div>
      <Table caption="Capacity by lift, kg at the bar" isCaptionHidden>
        <thead>
          <tr>
            <th scope="col">Lift</th>
            <th scope="col" className="number">
              kg at the bar
            </th>
            <th scope="col" className="number">
              95 % interval
            </th>
            <th scope="col" className="number">
              age
            </th>
            <th scope="col">rests on</th>
          </tr>
        </thead>
        <tbody>
          {capacity.lifts.map((lift) => (
            <tr key={lift.exercise} className={join(lift.exercise === chosen && styles['chosen'])}>
              <th scope="row">
                <Link
                  href={`?exercise=${encodeURIComponent(lift.exercise)}`}
                  aria-current={lift.exercise === chosen ? 'true' : undefined}
                >
                  {lift.name}
                </Link>
              </th>
              <Reading lift={lift} today={capacity.today} />
            </tr>
          ))}
        </tbody>
      </Table>
      <p className="soft small">
        An estimate is a median with an interval; ahead of the newest observation the level is held and the interval
        grows. Loads in flight are not a strength test. Exercises of which no maximum is tested are not listed.
      </p>
    </div>
  );
}

function Reading({ lift: { reading }, today }: { readonly lift: CapacityLift; readonly today: Day }) {
  if (reading.kind === 'none')
    return (
      <td colSpan={4} className="soft">
        {reading.says}
      </td>
    );
  const { estimate } = reading;
  const [low, high] = intervalOf(estimate);
  return (
    <>
      <td className="number">
        <b>{Math.round(estimate.median)}</b>
        {estimate.of > 1 && <span className="soft small"> {estimate.of}RM</span>}
      </td>
      <td className={join('number', styles['whole'])}>
        {Math.round(low)} to {Math.round(high)}
      </td>
      <td className={join('number', styles['whole'])}>{ageOf(daysBetween(estimate.newest, today))}</td>
      <td className="soft">{reading.rests}</td>
    </>
  );
}

const ageOf = (days: number): string => (days === 0 ? 'today' : days === 1 ? '1 day' : `${days} days`);
