import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import './tokens.css';
import './base.css';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { I18nProvider } from 'react-aria-components';
import { App } from './app.tsx';

const queries = new QueryClient({
  // The program is on this computer: an answer is there at once or not at all.
  defaultOptions: {
    queries: { retry: false, refetchOnWindowFocus: true, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
});

const root = document.getElementById('root');
if (!root) throw new Error('The page has no element with the id "root".');

createRoot(root).render(
  <StrictMode>
    <I18nProvider locale="en-GB">
      <QueryClientProvider client={queries}>
        <App />
      </QueryClientProvider>
    </I18nProvider>
  </StrictMode>,
);
