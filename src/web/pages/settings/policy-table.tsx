import { DEFAULT_POLICIES, type Policies } from '#domain/policies.ts';
import { Table } from '../../parts/parts.ts';
import { POLICY_WORDS } from './policy-words.ts';

/** What this team has set for itself, with the defaults where they differ. */
export function PolicyTable({ policies }: { readonly policies: Policies }) {
  return (
    <section aria-label="Policies">
      <h2>Policies</h2>
      <Table caption="Practice that a team may set for itself" isCaptionHidden isWide={false}>
        <thead>
          <tr>
            <th scope="col">policy</th>
            <th scope="col">value</th>
            <th scope="col">what it means</th>
          </tr>
        </thead>
        <tbody>
          {(Object.keys(POLICY_WORDS) as (keyof Policies)[]).map((name) => (
            <PolicyRow key={name} name={name} policies={policies} />
          ))}
        </tbody>
      </Table>
    </section>
  );
}

function PolicyRow({ name, policies }: { readonly name: keyof Policies; readonly policies: Policies }) {
  const { title, means } = POLICY_WORDS[name];
  const [value, byDefault] = [shown(name, policies), shown(name, DEFAULT_POLICIES)];
  return (
    <tr>
      <th scope="row">{title}</th>
      <td>
        {value}
        {value !== byDefault && <span className="soft small"> (as shipped: {byDefault})</span>}
      </td>
      <td className="soft">{means}</td>
    </tr>
  );
}

const shown = <Name extends keyof Policies>(name: Name, policies: Policies): string =>
  POLICY_WORDS[name].show(policies[name]);
