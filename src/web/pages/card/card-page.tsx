import { useParams } from 'wouter';
import { Await } from '../../parts/await.tsx';
import { useCard } from '../../windows.ts';
import { CardWindowView } from './card-window-view.tsx';

/** A card by its identity, or by the code that was read from paper. */
export const CardPage = () => {
  const { card } = useParams<{ card: string }>();
  return <Await query={useCard(card)}>{(found) => <CardWindowView card={found} />}</Await>;
};
