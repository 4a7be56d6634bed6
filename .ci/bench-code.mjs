// Times our own code, built as the site builds it: the assessment at growing numbers of sightings, the drawing.
import { growing, loadBuilt, medianTime } from './bench-tools.mjs';

const CAMERAS = ['whole', 'feet', 'close'];
const FOCUSES = ['foot', 'bandage', 'heel', 'knee', 'thigh', 'bed-end', 'child'];
const SIZES = [10, 1_000, 10_000];

/** In microseconds: one call is short beside a tick of the clock, so many are timed together. */
const timeOf = (call, share) => 1000 * medianTime('code', call, share);

/** Rows of name, value and unit: the rules and the drawing, each call by itself. */
export async function codeTimes(root) {
  const { assess, SIGN_ROWS, WARD, drawScene, layoutScene, NEUTRAL, DRAWN_AGES, SKIN_TONES, HAIRS } =
    await loadBuilt(root, [
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
  const rows = growing('assess', 'sightings', SIZES, 3, (size) => {
    const report = { sightings: sightings(size) };
    return timeOf(() => assess(report, context), size > 5000 ? 1 : size > 500 ? 5 : 200) / 1000;
  });
  // a drawing has no entries, and is the same whatever is in the notes: what grows is how many bed cards are drawn
  const of = (list, n) => list[n % list.length];
  const cards = (count) =>
    Array.from({ length: count }, (_, n) => ({
      ...NEUTRAL,
      camera: of(CAMERAS, n),
      focus: of(FOCUSES, n),
      side: of(['left', 'right'], n),
      age: of(DRAWN_AGES, n),
      skin: of(SKIN_TONES, n),
      hair: of(HAIRS, n),
    }));
  rows.push(
    ...growing('layoutScene', 'bed cards', SIZES, 3, (size) => {
      const drawn = cards(size);
      return medianTime('layout', () => drawn.map((spec) => layoutScene(spec)), size > 500 ? 1 : 20);
    }),
  );
  for (const camera of CAMERAS)
    for (const focus of camera === 'close' ? FOCUSES : [NEUTRAL.focus]) {
      const spec = { ...NEUTRAL, camera, focus };
      const name = camera === 'close' ? `drawScene, close, ${focus}` : `drawScene, ${camera}`;
      rows.push({ name, value: timeOf(() => drawScene(spec), 20), unit: 'µs', digits: 0 });
    }
  return rows;
}
