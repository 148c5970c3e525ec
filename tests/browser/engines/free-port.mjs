import { createServer } from 'node:net';

/** A port of the loopback that nobody listens at. */
export function freePort() {
  return new Promise((found) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => found(port));
    });
  });
}
