import { useParams } from 'wouter';
import { Await } from '../../parts/await.tsx';
import { usePlannedCard } from '../../windows.ts';
import { CardWindowView } from './card-window-view.tsx';

/** What would be issued for a day. */
export const PlannedCardPage = () => {
  const { person, day } = useParams<{ person: string; day: string }>();
  return <Await query={usePlannedCard(person, Number(day))}>{(found) => <CardWindowView card={found} />}</Await>;
};
