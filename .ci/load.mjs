// Asks a server for pages as fast as it answers, over connections that stay open, as a full ward's phones would.
import http from 'node:http';
import https from 'node:https';

const PATIENCE_MS = 30_000;

/**
 * One answer, whole.
 * Errors: rejects where the server is silent for half a minute.
 * @param {string} address
 * @param {{ headers?: Record<string, string>, method?: string, agent?: http.Agent }} [options]
 * @returns {Promise<{ status: number, headers: http.IncomingHttpHeaders, body: Buffer }>}
 */
export function ask(address, { headers = {}, method = 'GET', agent } = {}) {
  const url = new URL(address);
  const { request } = url.protocol === 'https:' ? https : http;
  return new Promise((resolve, reject) => {
    const asked = request(
      {
        host: url.hostname,
        port: url.port,
        // as it stands in the page: the parser of addresses would hide what a server must bear
        path: address.slice(url.origin.length).replace(/#.*/s, '') || '/',
        method,
        headers,
        agent,
        // the certificate is a test's own
        rejectUnauthorized: false,
        servername: 'toes.ward.example',
      },
      (response) => {
        const parts = [];
        response.on('data', (part) => parts.push(part));
        response.once('error', reject);
        response.once('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(parts),
          }),
        );
      },
    );
    asked.once('error', reject);
    asked.setTimeout(PATIENCE_MS, () => asked.destroy(new Error(`no answer from ${url.origin}`)));
    asked.end();
  });
}

/** Connections that stay open, for either protocol. */
export const openConnections = (origin, most) =>
  new (origin.startsWith('https:') ? https : http).Agent({ keepAlive: true, maxSockets: most });

/**
 * Asks for some addresses in turn, again and again.
 * @param {readonly string[]} addresses
 * @param {{ requests: number, atOnce?: number, seconds?: number, headers?: Record<string, string> }} options ends at the
 *   number of requests or after the seconds, whichever comes first
 * @returns {Promise<{ answered: number, failed: string[], seconds: number, bytes: number }>}
 */
export async function load(addresses, { requests, atOnce = 16, seconds = 5, headers = {} }) {
  const agent = openConnections(addresses[0] ?? '', atOnce);
  const start = performance.now();
  const soFar = () => (performance.now() - start) / 1000;
  const outcome = { answered: 0, failed: [], seconds: 0, bytes: 0 };
  let next = 0;
  const hand = async () => {
    while (next < requests && soFar() < seconds) {
      const address = addresses[next++ % addresses.length];
      try {
        const { status, body } = await ask(address, { agent, headers });
        if (status !== 200) throw new Error(String(status));
        outcome.answered += 1;
        outcome.bytes += body.length;
      } catch (error) {
        outcome.failed.push(`${address}: ${error.message}`);
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, hand));
  outcome.seconds = soFar();
  agent.destroy();
  return outcome;
}
