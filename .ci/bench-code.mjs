// Times our own code, built as the site builds it: the assessment at growing numbers of sightings, the drawing.
import { loadBuilt, medianTime } from './bench-tools.mjs';

const CAMERAS = ['whole', 'feet', 'close'];
const FOCUSES = ['foot', 'bandage', 'heel', 'knee', 'thigh', 'bed-end', 'child'];
const SIZES = [10, 1_000, 10_000];

/** In microseconds: one call is short beside a tick of the clock, so many are timed together. */
const timeOf = (call, share) => 1000 * medianTime('code', call, share);

/** Rows of name, value and unit: the rules and the drawing, each call by itself. */
export async function codeTimes(root) {
  const { assess, SIGN_ROWS, WARD, drawScene, NEUTRAL } = await loadBuilt(root, [
    'src/domain/signs/assess.ts',
    'src/content/signs.ts',
    'src/content/ward.ts',
    'src/scene/paths.ts',
    'src/scene/spec.ts',
  ]);

  const now = 30_000_000;
  const context = {
    now,
    offsetMinutes: 0,
    child: { under3: false, canTell: 'yes' },
    signs: SIGN_ROWS,
    ward: WARD,
  };
  const ids = Object.keys(SIGN_ROWS);
  // a sighting every seven minutes; a nurse looked at four of five
  const sightings = (count) =>
    Array.from({ length: count }, (_, i) => {
      const at = now - 7 * i - 1;
      return { sign: ids[i % ids.length], answer: 'different', at, ...(i % 5 ? { lookedAt: at + 5 } : {}) };
    });
  const rows = [];
  let before;
  for (const size of SIZES) {
    const report = { sightings: sightings(size) };
    const value = timeOf(() => assess(report, context), size > 5000 ? 1 : size > 500 ? 5 : 200) / 1000;
    rows.push({ name: `assess, ${size} sightings`, value, unit: 'ms', digits: 3 });
    if (before)
      rows.push({
        name: `assess, growth from ${before.size} to ${size} (${size / before.size} times as many)`,
        value: value / before.value,
        unit: 'times',
        digits: 1,
      });
    before = { size, value };
  }
  for (const camera of CAMERAS)
    for (const focus of camera === 'close' ? FOCUSES : [NEUTRAL.focus]) {
      const spec = { ...NEUTRAL, camera, focus };
      const name = camera === 'close' ? `drawScene, close, ${focus}` : `drawScene, ${camera}`;
      rows.push({ name, value: timeOf(() => drawScene(spec), 20), unit: 'µs', digits: 0 });
    }
  return rows;
}
