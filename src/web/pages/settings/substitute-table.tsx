import { QUALITIES, type Exercise } from '#domain/catalogue.ts';
import { Table } from '../../parts/parts.ts';

interface SubstituteTableProps {
  readonly exercise: Exercise;
  readonly nameOf: (id: string) => string;
}

/** What can be done instead, in the order in which it is tried, and how much of each quality that covers. */
export function SubstituteTable({ exercise: { name, substitutes }, nameOf }: SubstituteTableProps) {
  if (substitutes.length === 0) return <p className="soft">Nothing is rated for it.</p>;
  const qualities = QUALITIES.filter((quality) => substitutes.some(({ covers }) => covers[quality] !== undefined));
  return (
    <Table caption={`Instead of ${name}`} isCaptionHidden isWide={false}>
      <thead>
        <tr>
          <th scope="col">exercise</th>
          {qualities.map((quality) => (
            <th key={quality} scope="col" className="number">
              {quality}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {substitutes.map(({ exercise, covers }) => (
          <tr key={exercise}>
            <th scope="row">
              <a href={`#${exercise}`}>{nameOf(exercise)}</a>
            </th>
            {qualities.map((quality) => (
              <td key={quality} className="number">
                <Coverage of={covers[quality]} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

const Coverage = ({ of }: { readonly of: number | undefined }) => {
  if (of === undefined) return <span className="soft small">not rated</span>;
  return of === 0 ? <span className="soft small">uncovered</span> : <>{of}</>;
};
