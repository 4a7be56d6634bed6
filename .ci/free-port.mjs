// A port of this machine that nobody listens on.
import { createServer } from 'node:net';

/**
 * Asks the system for a free port and gives it back; somebody else may take it before it is used.
 * @returns {Promise<number>}
 */
export const freePort = () =>
  new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
