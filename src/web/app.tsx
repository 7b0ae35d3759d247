import { Await } from './parts/await.tsx';
import { StartPage } from './pages/start/start-page.tsx';
import { Routes } from './routes.tsx';
import { Shell } from './shell/shell.tsx';
import { Outside } from './shell/outside.tsx';
import { SignerProvider } from './signer.tsx';
import { useHouse, useStart } from './windows.ts';

/** The first page until a house is open; then the shell with the page of the address. */
export const App = () => {
  const start = useStart();
  if (start.data === undefined)
    return (
      <Outside>
        <Await query={start}>{() => null}</Await>
      </Outside>
    );
  return start.data.state === 'open' ? <OpenHouse /> : <StartPage start={start.data} />;
};

const OpenHouse = () => {
  const query = useHouse();
  if (query.data === undefined)
    return (
      <Outside>
        <Await query={query}>{() => null}</Await>
      </Outside>
    );
  return (
    <SignerProvider house={query.data}>
      <Shell house={query.data}>
        <Routes />
      </Shell>
    </SignerProvider>
  );
};
