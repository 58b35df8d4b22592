import { createServer, type Plugin } from 'vite';
import { root } from '../../server/fingerprint.mjs';

// `npm run parts`: every part of a wall in every state, drawn anew as its source changes. It is
// no page of a kitchen: `client/` does not know of it, and nothing of it is built into `dist/`.

const PAGE = '/test/gallery/index.html';

const atParts: Plugin = {
  name: 'parts',
  configureServer: ({ middlewares }) => {
    middlewares.use((request, _response, next) => {
      request.url = request.url?.replace(/^\/(?:parts)?(?=$|\?)/, PAGE);
      next();
    });
  },
};

const server = await createServer({
  configFile: false,
  root,
  plugins: [atParts],
  server: { host: '127.0.0.1', port: 4180 },
  logLevel: 'warn',
});
await server.listen();
for (const query of ['', '?ground=night&language=es', '?long']) {
  console.log(`${server.resolvedUrls?.local[0]}parts${query}`);
}
