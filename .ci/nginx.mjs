// A real nginx with the documented files of server/, only their paths, ports and addresses replaced: for tests and bench.
// node .ci/nginx.mjs: sees to it that there is one (Debian as root, where the checks run by themselves)
import { spawn, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { freePort } from './free-port.mjs';
import { precompress } from './precompress.mjs';

const root = path.resolve(import.meta.dirname, '..');
const PLACES = [process.env.BARE_TOES_NGINX, '/usr/sbin/nginx', '/usr/bin/nginx', '/usr/local/sbin/nginx'];
const STARTS_WITHIN_MS = 30_000;

const nginxPlace = () => PLACES.find((place) => place && existsSync(place));
const hasOpenssl = () => spawnSync('openssl', ['version'], { stdio: 'ignore' }).status === 0;

/**
 * Why the configuration cannot be tried here, in a sentence; nothing where it can.
 * @returns {string | undefined}
 */
export function whyNoNginx() {
  if (process.platform === 'win32') return 'not tried: the configuration of server/ is for Debian’s nginx';
  if (!nginxPlace()) return 'not tried: there is no nginx here (Debian: apt-get install nginx-light)';
  if (!hasOpenssl()) return 'not tried: there is no openssl here to make a certificate with';
  if (!existsSync('/etc/nginx/mime.types')) return 'not tried: this nginx has no /etc/nginx/mime.types';
  return undefined;
}

/** Installs Debian's nginx where that is possible. Returns what was done. */
function ensureNginx() {
  const isDebianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (whyNoNginx() && isDebianRoot) {
    // a machine without a way out must not wait for it
    const apt = (...args) =>
      spawnSync('apt-get', ['-q', '-o', 'Acquire::http::Timeout=15', '-o', 'Acquire::Retries=1', ...args], {
        stdio: 'ignore',
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      }).status === 0;
    const install = () => apt('install', '-y', '--no-install-recommends', 'nginx-light', 'openssl');
    if (!install() && apt('update')) install();
  }
  return `nginx: ${whyNoNginx() ?? nginxPlace()}`;
}

/** Puts each new text in the place of an old one; an old one that is not there is a fault of the documented file. */
function replaced(name, changes) {
  let text = readFileSync(path.join(root, 'server', name), 'utf8');
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`server/${name}: "${from}" is not there any more`);
    text = text.replaceAll(from, to);
  }
  return text;
}

/** What surrounds a site in Debian's /etc/nginx/nginx.conf, with every path in a folder of ours. */
const mainFile = (folder) => `
${process.getuid?.() === 0 ? 'user root;' : ''}
worker_processes auto;
pid ${folder}/nginx.pid;
error_log ${folder}/error.log;
events { worker_connections 768; }
http {
  sendfile on;
  tcp_nopush on;
  types_hash_max_size 2048;
  include /etc/nginx/mime.types;
  default_type application/octet-stream;
  access_log ${folder}/access.log;
  gzip on;
  ${['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map((kind) => `${kind}_temp_path ${folder}/${kind};`).join('\n  ')}
  include conf.d/*.conf;
  include sites-enabled/*;
}
`;

/** A hospital's own site, with things of its own around the folder. */
const hospital = (folder, port) => `
server {
  listen 127.0.0.1:${port} default_server;
  server_name www.hospital.example;
  root ${folder}/srv/hospital;
  add_header X-Hospital "its own" always;
  location ~ \\.(js|css|html)$ { return 410; }
  include snippets/bare-toes-folder.conf;
}
`;

function makeCertificate(folder) {
  const { status, stderr } = spawnSync(
    'openssl',
    ['req', '-x509', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:prime256v1', '-nodes', '-days', '2']
      .concat(['-subj', '/CN=toes.ward.example', '-addext', 'subjectAltName=DNS:toes.ward.example'])
      .concat(['-keyout', `${folder}/key.pem`, '-out', `${folder}/certificate.pem`]),
  );
  if (status !== 0) throw new Error(`openssl › certificate: ${stderr}`);
}

const answers = (port) =>
  new Promise((resolve) => {
    get({ host: '127.0.0.1', port, path: '/' }, (response) => resolve(Boolean(response.resume())))
      .once('error', () => resolve(false))
      .setTimeout(1000, function () {
        this.destroy();
      });
  });

/**
 * Starts nginx on a packed copy of a build: by https at the root, as server/at-root.conf says, and in /toes/ of a
 * hospital's site, as server/in-a-folder.conf says.
 * Errors: throws with nginx's own words where it refuses the configuration.
 *
 * @param {string} build the folder to serve
 * @param {{ folderBuild?: string }} [options] another build to serve in /toes/
 * @returns {Promise<import('./nginx.d.mts').Running>}
 */
export async function startNginx(build, { folderBuild } = {}) {
  const why = whyNoNginx();
  if (why) throw new Error(why);
  const folder = mkdtempSync(path.join(tmpdir(), 'bare-toes-nginx-'));
  for (const name of ['conf.d', 'sites-enabled', 'snippets', 'srv/hospital'])
    mkdirSync(path.join(folder, name), { recursive: true });
  const site = path.join(folder, 'srv/bare-toes');
  cpSync(build, site, { recursive: true, preserveTimestamps: true });
  await precompress(site, { brotli: false });
  const inFolder = path.join(folder, 'srv/toes');
  if (folderBuild) {
    cpSync(folderBuild, inFolder, { recursive: true, preserveTimestamps: true });
    await precompress(inFolder, { brotli: false });
  } else symlinkSync(site, inFolder);
  makeCertificate(folder);

  const [plain, secure, other] = [await freePort(), await freePort(), await freePort()];
  const write = (name, text) => writeFileSync(path.join(folder, name), text);
  write('nginx.conf', mainFile(folder));
  write('conf.d/bare-toes-caching.conf', replaced('caching.conf', []));
  write('snippets/bare-toes-headers.conf', replaced('headers.conf', []));
  write(
    'snippets/bare-toes-folder.conf',
    replaced('in-a-folder.conf', [['root /srv;', `root ${folder}/srv;`]]),
  );
  write(
    'sites-enabled/bare-toes',
    replaced('at-root.conf', [
      // not every machine that runs the checks has addresses of the new kind
      ['    listen [::]:80;\n', ''],
      ['    listen [::]:443 ssl http2;\n', ''],
      ['listen 80;', `listen 127.0.0.1:${plain};`],
      ['listen 443 ssl http2;', `listen 127.0.0.1:${secure} ssl http2;`],
      ['/etc/ssl/certs/toes.ward.example.pem', `${folder}/certificate.pem`],
      ['/etc/ssl/private/toes.ward.example.key', `${folder}/key.pem`],
      ['/srv/bare-toes', site],
    ]),
  );
  write('sites-enabled/hospital', hospital(folder, other));

  const child = spawn(
    nginxPlace(),
    ['-c', path.join(folder, 'nginx.conf'), '-p', folder, '-g', 'daemon off;'],
    {
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  let said = '';
  child.stderr.on('data', (data) => (said += data));
  const ended = new Promise((resolve) => child.once('exit', resolve));
  // a test run that breaks off must not leave a server behind
  process.once('exit', () => child.kill());
  const close = async () => {
    child.kill('SIGTERM');
    await ended;
    rmSync(folder, { recursive: true, force: true });
  };
  const start = Date.now();
  while (!(await answers(other))) {
    if (child.exitCode !== null || Date.now() - start > STARTS_WITHIN_MS) {
      await close();
      throw new Error(`nginx did not start: ${said}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
  return {
    http: `http://127.0.0.1:${plain}`,
    https: `https://127.0.0.1:${secure}`,
    hospital: `http://127.0.0.1:${other}`,
    folder,
    close,
  };
}

if (process.argv[1] === import.meta.filename) console.log(ensureNginx());
