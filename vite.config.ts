import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { defineConfig, type ProxyOptions, type UserConfig } from 'vite';

const inProject = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** While developing, the program runs beside Vite and is asked through it, as if both were one address. */
const program = `http://127.0.0.1:${process.env['BALLAST_DEV_PORT'] ?? ''}`;
const handOver: ProxyOptions = {
  target: program,
  changeOrigin: true,
  configure: (proxy) => proxy.on('proxyReq', (request) => request.setHeader('origin', program)),
};

/** The pages. The server replaces __NONCE__ by a fresh nonce for every page it sends. */
const web: UserConfig = {
  root: inProject('src/web'),
  plugins: [react()],
  html: { cspNonce: '__NONCE__' },
  server: { host: '127.0.0.1', proxy: { '/api': handOver } },
  build: {
    outDir: inProject('dist/web'),
    emptyOutDir: true,
    manifest: true,
    // The content policy allows no data addresses and no inline script.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // kB before compression; what the first page may weigh is held by a test.
    chunkSizeWarningLimit: 1500,
  },
};

/** The programs behind `npm start` and `npm run ballast`: plain JavaScript; installed packages are not copied in. */
const programs: UserConfig = {
  root: inProject('.'),
  publicDir: false,
  build: {
    ssr: true,
    outDir: inProject('dist/main'),
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: { serve: inProject('src/main/serve.ts'), command: inProject('src/main/command.ts') },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
};

export default defineConfig(({ isSsrBuild }) => (isSsrBuild ? programs : web));
