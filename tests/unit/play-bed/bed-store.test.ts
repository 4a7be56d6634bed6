// A bed as a device kept it: what can be read is kept, what cannot is named and left out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { anyBed, TYPICAL } from '../../helpers/play-beds.ts';

const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
/** The typical bed with another value at a place, told as `sketch.events.2.from`. */
function withAt(path: string, value: unknown): Record<string, unknown> {
  const bed = copy(TYPICAL) as unknown as Record<string, unknown>;
  const steps = path.split('.');
  const last = steps.pop()!;
  let row = bed;
  for (const step of steps) row = row[step] as Record<string, unknown>;
  if (value === undefined) delete row[last];
  else row[last] = value;
  return bed;
}
const whereOf = (value: unknown) => readBed(value).faults.map(({ where }) => where);

describe('a bed that was kept', () => {
  it('is read as it was, through JSON and twice', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        expect(readBed(copy(bed))).toEqual({ bed, faults: [] });
        expect(readBed(Object.freeze(bed))).toEqual({ bed, faults: [] });
      }),
      { numRuns: 200 },
    );
  });

  it('is the same bed in whatever order its words were ticked', () => {
    const { child, room, plan } = TYPICAL;
    const turned = {
      ...TYPICAL,
      child: { ...child, likes: [...child.likes, ...child.likes].reverse() },
      room: { ...room, things: [...room.things].reverse() },
      plan: [...plan!].reverse(),
      sketch: { ...TYPICAL.sketch, events: [...TYPICAL.sketch.events].reverse() },
    };
    expect(readBed(turned)).toEqual({ bed: TYPICAL, faults: [] });
  });

  it('of a version before there were own ideas, pins and history is read with none', () => {
    const { own: _own, pins: _pins, history: _history, done: _done, notToday: _not, plan, ...old } = TYPICAL;
    const kept = plan!.filter(({ idea }) => !idea.startsWith('own'));
    const none = { own: [], pins: [], done: [], notToday: [], history: { yesterday: [], lastThreeDays: [] } };
    expect(readBed({ ...old, plan: kept })).toEqual({ bed: { ...old, plan: kept, ...none }, faults: [] });
  });

  it('of a version before there were fears, language and sound is read without a fault, and without them', () => {
    const all = { ...TYPICAL, fears: ['dark', 'water'], wordless: true, loudest: 1 };
    expect(readBed(all)).toEqual({ bed: all, faults: [] });
    expect(readBed({ ...TYPICAL, fears: [], wordless: false, loudest: 2 })).toEqual({
      bed: TYPICAL,
      faults: [],
    });
  });

  it('counts yesterday among the last three days', () => {
    const bed = readBed(withAt('history', { yesterday: ['what-if'], lastThreeDays: [] })).bed;
    expect(bed?.history.lastThreeDays).toEqual(['what-if']);
  });
});

/** One wrong value, where it is named, and what becomes of the place: gone from its list, or this value. */
const WRONG: [string, unknown, string][] = [
  ['sketch.events.2.from', 541, 'bed › sketch › events › 3 › from'],
  ['sketch.events.0.from', -5, 'bed › sketch › events › 1 › from'],
  ['sketch.events.0.minutes', 0, 'bed › sketch › events › 1 › minutes'],
  ['sketch.events.0.minutes', 1440, 'bed › sketch › events › 1 › minutes'],
  ['sketch.events.0.id', 'Wash!', 'bed › sketch › events › 1 › id'],
  ['sketch.events.1.id', 'breakfast', 'bed › sketch › events › breakfast'],
  ['sketch.moments.1.from', '14:30', 'bed › sketch › moments › 2 › from'],
  ['sketch.moments.1.id', 'needle-1', 'bed › sketch › moments › needle-1'],
  ['sketch.propped.0.until', 480, 'bed › sketch › propped › 1 › until'],
  ['sketch.energy.0.energy', 4, 'bed › sketch › energy › 1 › energy'],
  ['plan.3.minutes', 7, 'bed › plan › 4 › minutes'],
  ['plan.3.idea', 'own-9', 'bed › plan › 4 › idea'],
  ['plan.3.window', '', 'bed › plan › 4 › window'],
  ['child.likes.0', 7, 'bed › child › likes › 1'],
  ['child.lacks', ['wings'], 'bed › child › lacks › 1'],
  ['permissions.0', 'climbing', 'bed › permissions › 1'],
  ['room.things.4', 'x'.repeat(41), 'bed › room › things › 5'],
];

describe('what cannot be read', () => {
  it.each(WRONG)('%s is named and goes alone', (path, value, where) => {
    const { bed, faults } = readBed(withAt(path, value));
    expect(faults.map((fault) => fault.where)).toEqual([where]);
    const kept = copy(TYPICAL) as unknown as Record<string, unknown>;
    const [top, inner, n] = path.split('.');
    const list = (
      /^\d+$/.test(inner!) ? kept[top!] : (kept[top!] as Record<string, unknown>)[inner!]
    ) as unknown[];
    if (Array.isArray(list) && list.length) list.splice(Number(/^\d+$/.test(inner!) ? inner : n), 1);
    expect(bed).toEqual(kept);
  });

  it.each(['shape', 'day', 'child', 'child.ageMonths', 'sketch', 'sketch.wake', 'sketch.lightsOut'])(
    'without %s there is no bed',
    (path) => {
      for (const value of [undefined, null, 'zzz', 1e300, -1, [], {}]) {
        const { bed, faults } = readBed(withAt(path, value));
        expect(bed).toBeUndefined();
        expect(faults[0]!.where.startsWith(`bed › ${path.split('.')[0]}`)).toBe(true);
      }
    },
  );

  it('of a bed at which nobody spoke of eating stays so; of one that may eat there is nothing unsaid', () => {
    const read = (more: object) => readBed({ ...TYPICAL, ...more });
    expect(read({ eating: false, eatingUnsaid: true })).toMatchObject({
      bed: { eating: false, eatingUnsaid: true },
      faults: [],
    });
    for (const bed of [read({ eating: true, eatingUnsaid: true }), read({ eating: false })])
      expect(bed.bed).not.toHaveProperty('eatingUnsaid');
  });

  it.each<[string, unknown]>([
    ['freeHands', 0],
    ['child.mouths', true],
    ['room.shared', true],
    ['room.isolation', 'breath'],
    ['eating', false],
    ['bored', false],
    ['limits.screenMinutes', 0],
    ['limits.grownUpMinutes', 0],
    ['sketch.moments.0.weight', 3],
    ['sketch.moments.0.freeHands', 0],
    ['sketch.moments.0.procedure', 'other'],
  ])('%s becomes the most careful, and says so', (path, careful) => {
    for (const value of [undefined, null, 'zzz', 9e9, [], {}]) {
      const { bed, faults } = readBed(withAt(path, value));
      expect(faults.length).toBe(1);
      const seen = path
        .split('.')
        .reduce((row, step) => (row as Record<string, unknown>)[step], bed as unknown);
      expect(seen).toBe(careful);
    }
  });

  it('about language or sound becomes the most careful; a fear nobody knows goes alone', () => {
    for (const value of [null, 'zzz', 9e9, [], {}]) {
      expect(readBed({ ...TYPICAL, wordless: value })).toMatchObject({
        bed: { wordless: true },
        faults: [{ where: 'bed › wordless' }],
      });
      expect(readBed({ ...TYPICAL, loudest: value })).toMatchObject({
        bed: { loudest: 0 },
        faults: [{ where: 'bed › loudest' }],
      });
    }
    const { bed, faults } = readBed({ ...TYPICAL, fears: ['water', 'kites', 'dark', 'water'] });
    expect(bed?.fears).toEqual(['dark', 'water']);
    expect(faults.map(({ where }) => where)).toEqual(['bed › fears › 2']);
  });

  it('is a day that is not in the calendar', () => {
    for (const day of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '2026-01-00',
      '2019-12-31',
      '2148-01-01',
      '2100-02-29',
      '26-01-01',
      '2026-1-1',
      ' 2026-01-01',
    ])
      expect(whereOf({ ...TYPICAL, day }), day).toEqual(['bed › day']);
    for (const day of ['2028-02-29', '2026-12-31', '2020-01-01', '2147-12-31'])
      expect(readBed({ ...TYPICAL, day }).bed?.day).toBe(day);
  });

  it('is waking or lights-out in the night, off the grid or the wrong way round', () => {
    for (const [wake, lightsOut] of [
      [355, 1200],
      [360, 1325],
      [361, 1200],
      [1200, 1200],
      [1200, 420],
    ])
      expect(readBed({ ...TYPICAL, sketch: { ...TYPICAL.sketch, wake, lightsOut } }).bed).toBeUndefined();
    const longest = { ...TYPICAL, sketch: { ...TYPICAL.sketch, wake: 360, lightsOut: 1320 } };
    expect(readBed(longest)).toEqual({ bed: longest, faults: [] });
  });

  it('is what is beyond the most of each list; the first are kept', () => {
    const times = (n: number) => Array.from({ length: n }, (_, i) => i);
    const event = (i: number) => ({ id: `other-${i}`, from: 5 * i, minutes: 5 });
    const moment = (i: number) => ({ ...event(i), procedure: 'other', weight: 1, freeHands: 1 });
    const stretch = (i: number) => ({ from: 5 * i, until: 900 });
    const place = (i: number) => ({ idea: 'what-if', window: 'w-0700', from: 5 * i, minutes: 5 });
    const lists: [string, number, (i: number) => unknown][] = [
      ['sketch.events', 24, event],
      ['sketch.moments', 8, moment],
      ['sketch.propped', 6, stretch],
      ['sketch.quiet', 6, stretch],
      ['sketch.grownUp', 6, stretch],
      ['sketch.energy', 6, (i) => ({ from: 5 * i, energy: 2 })],
      ['plan', 48, place],
      ['pins', 48, place],
      ['done', 48, place],
      ['own', 8, (i) => ({ ...TYPICAL.own[0]!, id: `own-${i + 1}` })],
    ];
    for (const [path, most, make] of lists) {
      const read = (n: number) => readBed(withAt(path, times(n).map(make)));
      expect(read(most).faults, path).toEqual([]);
      const { bed, faults } = read(most + 1);
      expect(faults.map(({ where, rule }) => [where, rule])).toEqual([
        [`bed › ${path.replace('.', ' › ')}`, `at most ${most}`],
      ]);
      expect(bed).toEqual(read(most).bed);
      expect(read(100_000).bed).toEqual(bed);
    }
  });

  it('is an own idea with anything wrong, and whatever was placed of it', () => {
    const { bed, faults } = readBed(withAt('own.0.title', '\u202eevil'));
    expect(bed?.own).toEqual([]);
    expect(bed?.plan?.some(({ idea }) => idea.startsWith('own'))).toBe(false);
    expect(faults[0]).toMatchObject({ where: 'bed › own › 1 › title' });
  });

  it('is a field that this version does not know', () => {
    expect(whereOf({ ...TYPICAL, name: 'someone' })).toEqual(['bed › name']);
    expect(whereOf(withAt('child.name', 'someone'))).toEqual(['bed › child › name']);
    expect(readBed({ ...TYPICAL, name: 'someone' }).bed).toEqual(TYPICAL);
  });

  it('is whatever was not written into the bed itself', () => {
    expect(readBed(Object.create(TYPICAL)).bed).toBeUndefined();
    expect(readBed(JSON.parse(`{"__proto__": ${JSON.stringify(TYPICAL)}}`)).bed).toBeUndefined();
    const planted = JSON.parse(JSON.stringify(TYPICAL).replace('{', '{"__proto__": {"eating": true}, '));
    expect(readBed(planted)).toMatchObject({ bed: TYPICAL, faults: [{ where: 'bed › __proto__' }] });
    expect(Object.hasOwn({}, 'eating') || 'eating' in {}).toBe(false);
  });

  it('never stops the phone, however deep, long or strange, and is told in a page at most', () => {
    let deep: unknown = 1;
    for (let n = 0; n < 100_000; n++) deep = { deep };
    const long = Array.from({ length: 50_000 }, () => deep);
    const wide = Object.fromEntries(long.map((value, n) => [`field-${n}`, value]));
    for (const value of [
      deep,
      long,
      wide,
      'x'.repeat(1e6),
      1e308,
      Infinity,
      Number.NaN,
      () => 1,
      Symbol('x'),
    ])
      for (const path of [
        'shape',
        'day',
        'child',
        'child.likes',
        'room.things',
        'sketch.events',
        'plan',
        'own',
        'own.0.cautions',
        'history',
      ]) {
        const { faults } = readBed(withAt(path, value));
        expect(faults.length).toBeGreaterThan(0);
        expect(faults.length).toBeLessThanOrEqual(100);
        expect(faults.every(({ where, seen }) => where.length < 200 && String(seen).length < 100)).toBe(true);
      }
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
        (value) => {
          expect(readBed(value).bed).toBeUndefined();
        },
      ),
    );
  });

  it('of any one place leaves a bed that reads the same again', () => {
    const places: string[] = [];
    const walk = (value: unknown, path: string) => {
      if (path) places.push(path);
      if (typeof value === 'object' && value !== null)
        for (const [key, inner] of Object.entries(value)) walk(inner, path ? `${path}.${key}` : key);
    };
    walk(TYPICAL, '');
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.anything(), (path, value) => {
        const { bed } = readBed(withAt(path, value));
        if (bed) expect(readBed(copy(bed))).toEqual({ bed, faults: [] });
      }),
      { numRuns: 1500 },
    );
  });
});
