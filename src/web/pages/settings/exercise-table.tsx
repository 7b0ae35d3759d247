import { Link } from 'wouter';
import type { CapacitySource, Exercise } from '#domain/catalogue.ts';
import { Table } from '../../parts/parts.ts';

/** Every exercise: which share of body weight it moves and where its capacity comes from. */
export function ExerciseTable({ exercises }: { readonly exercises: readonly Exercise[] }) {
  const nameOf = (id: string): string => exercises.find((exercise) => exercise.id === id)?.name ?? id;
  return (
    <section aria-label="Exercises">
      <h2>Exercises</h2>
      <p className="soft">
        Shares are computed by the body model: <Link href="/evidence">Evidence</Link> shows how.
      </p>
      <Table caption="Exercises" isCaptionHidden>
        <thead>
          <tr>
            <th scope="col">exercise</th>
            <th scope="col">pattern</th>
            <th scope="col">share by</th>
            <th scope="col">carried at</th>
            <th scope="col">capacity from</th>
            <th scope="col">rounded to</th>
            <th scope="col">loads</th>
            <th scope="col">rests on</th>
          </tr>
        </thead>
        <tbody>
          {exercises.map((exercise) => (
            <tr key={exercise.id} id={exercise.id}>
              <th scope="row">
                {exercise.name}
                {exercise.perSide && <span className="soft small"> each side</span>}
              </th>
              <td>{exercise.pattern}</td>
              <td>{exercise.shareModel}</td>
              <td>{exercise.carriedAt}</td>
              <td>{capacityOf(exercise.capacity, nameOf)}</td>
              <td>
                {exercise.roundTo.lb} lb, {exercise.roundTo.kg} kg
              </td>
              <td className="soft">{exercise.loads.join(', ')}</td>
              <td className="soft small">{exercise.source}</td>
            </tr>
          ))}
        </tbody>
      </Table>
    </section>
  );
}

const capacityOf = (capacity: CapacitySource, nameOf: (id: string) => string): string => {
  switch (capacity.kind) {
    case 'one-repetition maximum':
      return 'one-repetition maximum';
    case 'repetition maximum':
      return `${capacity.of}-repetition maximum`;
    case 'ratio':
      return `${capacity.ratio} × ${nameOf(capacity.to)}`;
    case 'none':
      return 'none: runs on effort';
  }
};
