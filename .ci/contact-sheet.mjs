// Draws every sign (or one) in chosen tones, sides, ages and lamps into one page, to be judged by eye.
// node .ci/contact-sheet.mjs [--specs FILE.json] [--sign ID] [--skin a,b] [--side left,right] [--age 5] [--out FILE.html]
import { createServer } from 'vite';
import { readFileSync, writeFileSync, mkdirSync } from 'node:fs';
import path from 'node:path';

const argument = (name, fallback) => {
  const i = process.argv.indexOf(`--${name}`);
  return i > 0 ? process.argv[i + 1] : fallback;
};
const root = path.resolve(import.meta.dirname, '..');

/** Lends the drawing's modules, loaded as they stand in src, for as long as `use` takes. */
export async function withSceneModules(use) {
  const server = await createServer({
    root,
    configFile: false,
    logLevel: 'error',
    server: { middlewareMode: true, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true },
    appType: 'custom',
  });
  try {
    const load = (file) => server.ssrLoadModule(file);
    const spec = await load('/src/scene/spec.ts');
    const { sceneMarkup: draw, thingMarkup } = await load('/src/scene/markup.ts');
    const drawWithLabel = (value, label = '') => draw(value, label);
    return await use({ load, spec, draw: drawWithLabel, thing: thingMarkup });
  } finally {
    await server.close();
  }
}

/** The style sheets that colour a drawing. */
export const sceneStyles = () =>
  ['src/styles/scene.css', 'src/styles/scene-skin.css']
    .map((f) => readFileSync(path.join(root, f), 'utf8'))
    .join('\n');

async function main() {
  await withSceneModules(async ({ load, spec, draw }) => {
    const skins = argument('skin', 'honey')
      .split(',')
      .flatMap((s) => (s === 'all' ? spec.SKIN_TONES : [s]));
    const sides = argument('side', 'left').split(',');
    const ages = argument('age', '5').split(',').map(Number);
    const lamps = argument('lamp', 'day').split(',');
    const hairs = argument('hair', 'short').split(',');
    const only = argument('sign', '');
    const specsFile = argument('specs', '');
    let rows;
    if (specsFile) {
      // a JSON list of {title, ...spec values}
      rows = JSON.parse(readFileSync(specsFile, 'utf8')).map(({ title, ...change }) => ({
        title,
        pictures: [change],
      }));
    } else {
      const { SIGN_PICTURES } = await load('/src/content/sign-pictures.ts');
      rows = Object.entries(SIGN_PICTURES)
        .filter(([id]) => !only || only.split(',').includes(id))
        .map(([id, p]) => ({
          title: id,
          pictures: [
            { camera: p.camera, focus: p.focus, ...p.usual },
            { camera: p.camera, focus: p.focus, ...p.usual, ...p.different },
          ],
        }));
    }
    const cells = [];
    for (const row of rows)
      for (const skin of skins)
        for (const side of sides)
          for (const age of ages)
            for (const lamp of lamps)
              for (const hair of hairs)
                cells.push(
                  `<figure class="${lamp}"><div>${row.pictures
                    .map((p) => draw({ ...spec.NEUTRAL, skin, side, age, lamp, hair, ...p }))
                    .join(
                      '',
                    )}</div><figcaption>${row.title} · ${skin} · ${side} · ${age} · ${lamp}</figcaption></figure>`,
                );
    const html = `<!doctype html><meta charset="utf-8"><title>Contact sheet</title><style>${sceneStyles()}
      body{font:14px sans-serif;margin:12px;display:grid;grid-template-columns:repeat(auto-fill,minmax(${argument('width', '520')}px,1fr));gap:12px;background:#fff}
      figure{margin:0;border:1px solid #ccc;padding:6px;background:#fbf6ec}figure.night{background:#14110f;color:#eee}
      figure div{display:flex;gap:6px}</style>${cells.join('\n')}`;
    const out = path.resolve(root, argument('out', '.svelte-kit/contact-sheet.html'));
    mkdirSync(path.dirname(out), { recursive: true });
    writeFileSync(out, html);
    console.log(`${cells.length} pictures: ${out}`);
  });
}
if (process.argv[1] === import.meta.filename) await main();
