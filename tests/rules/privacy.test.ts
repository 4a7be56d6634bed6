/** The table of README › Privacy against what the program keeps: no place is missing, and none is made up. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import * as notePlaces from '#device/note-place.ts';
import * as otherPlaces from '#device/places.ts';
import { fieldsOfTypes } from '../helpers/kept-fields.ts';

const places = { ...notePlaces, ...otherPlaces };
const root = path.resolve(import.meta.dirname, '../..');
const read = (file: string) => readFileSync(path.join(root, file), 'utf8');
const sources = ['src', 'static'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|js|svelte|html)$/.test(entry.name))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/')),
);

const readme = read('README.md');
const section = readme.slice(readme.indexOf('## Privacy'), readme.indexOf('## Safety'));
const rows = section
  .split('\n')
  .filter((line) => line.startsWith('| ') && !/^\| (what|---)/.test(line))
  .map((line) =>
    line
      .slice(1, -1)
      .split('|')
      .map((cell) => cell.trim()),
  );
const named = new Set(
  rows.flatMap((cells) => [...(cells[1] ?? '').matchAll(/`([^`]+)`/g)].map((match) => match[1]!)),
);

/** Each place with the fields that the list below the table names: `place`: … `field` … */
const listed = new Map(
  section
    .split('\n')
    .filter((line) => line.startsWith('- `'))
    .map((line) => {
      const [place, ...fields] = [...line.matchAll(/`([^`]+)`/g)].map((match) => match[1]!);
      return [place!, [...new Set(fields)].sort()] as const;
    }),
);
/** What is written in each place. */
const WRITTEN: Record<string, readonly string[]> = {
  [places.TABLE]: ['src/domain/notes/entries.ts › Entry', 'src/device/note-table.ts › DeviceRecord'],
  [places.familyKey()]: ['src/state/family.svelte.ts › Family'],
  [places.cardKey()]: ['src/device/card-place.ts › KeptCard', 'src/domain/bed-card/card.ts › BedCard'],
  [places.playKey()]: ['src/state/play.svelte.ts › Kept'],
  [places.dayKey()]: ['src/domain/day/kept-day.ts › KeptDay'],
};

/** Comments are no code. */
const code = (file: string) => read(file).replace(/\/\*[^]*?\*\/|(?<!:)\/\/.*$/gm, '');

describe('what is kept on a device', () => {
  it('each row says what, where, until when and how it is cleared', () => {
    expect(rows.length).toBeGreaterThan(6);
    for (const cells of rows) {
      expect(cells).toHaveLength(4);
      for (const cell of cells) expect(cell, cells[0]).not.toBe('');
    }
  });

  it('each key, database, table and prefix of the program stands in the table', () => {
    const used = [
      places.databaseName(),
      places.TABLE,
      `${places.DAY_PREFIX}…`,
      `${places.copyPrefix()}${places.DAY_PREFIX}…`,
      ...[places.familyKey(), places.cardKey(), places.playKey(), places.dayKey(), places.MADE_UP_KEY],
      ...[places.familyUnreadKey(), places.cardUnreadKey(), places.playUnreadKey(), places.dayUnreadKey()],
    ];
    expect(used.filter((key) => !named.has(key))).toEqual([]);
    const prefix = /const PREFIX = '([^']+)'/.exec(read('src/service-worker.ts'))?.[1];
    expect(named).toContain(`${prefix}…`);
    expect(named).toContain(/const DEVICE = '([^']+)'/.exec(read('src/device/note-table.ts'))?.[1]);
  });

  it('each place of the table is one that the program uses', () => {
    const known = new Set([
      ...Object.values(places)
        .filter((value): value is () => string => typeof value === 'function' && value.length === 0)
        .map((value) => String(value())),
      ...[
        places.MADE_UP_KEY,
        places.TABLE,
        `${places.DAY_PREFIX}…`,
        `${places.copyPrefix()}${places.DAY_PREFIX}…`,
        'device',
        '-made-up',
        'bare-toes-…',
        'sveltekit:…',
      ],
    ]);
    expect([...named].filter((name) => !known.has(name))).toEqual([]);
  });

  it('nothing is kept elsewhere: stores are opened in few files, and under the names of one', () => {
    const STORES =
      /\b(localStorage|sessionStorage|indexedDB|IDBFactory|caches|cookieStore|document\.cookie|showSaveFilePicker|navigator\.storage\.getDirectory)\b/;
    const opens = sources.filter((file) => STORES.test(code(file)));
    expect(
      opens.filter(
        (file) => !/^src\/device\/|^src\/service-worker\.ts$|^static\/before-paint\.js$/.test(file),
      ),
    ).toEqual([]);
    expect(opens.length).toBeGreaterThan(5);
    // a name that is written out somewhere else would be a place of its own
    const literal = /['"`](bare-toes:[a-z-]*)/g;
    const written = sources.flatMap((file) =>
      [...code(file).matchAll(literal)].map((match) => `${file}: ${match[1]}`),
    );
    expect(
      written.filter((line) => !/^src\/device\/note-place\.ts|^static\/before-paint\.js/.test(line)),
    ).toEqual([]);
    for (const line of written.filter((one) => !one.endsWith(':notes')))
      expect(named).toContain(line.split(': ')[1]);
  });

  it('each field that is written there has its name in the list, and no name is made up', () => {
    const fields = fieldsOfTypes(Object.values(WRITTEN).flat());
    // choices that a file writes beside the family's own
    const beside = sources.flatMap((file) =>
      [...code(file).matchAll(/browserPreferences\(\)\.write\(\{ (\w+)/g)].map((match) => match[1]!),
    );
    expect(beside).toEqual(['pins', 'reader']);
    for (const [place, types] of Object.entries(WRITTEN)) {
      const own = types.flatMap((type) => fields[type]!);
      expect(own.length, place).toBeGreaterThan(10);
      const all = new Set([...own, ...(place === places.familyKey() ? beside : [])]);
      expect(listed.get(place), place).toEqual([...all].sort());
    }
    expect([...listed.keys()].filter((place) => !named.has(place))).toEqual([]);
  });

  it('what a page writes under a key comes from the types that were looked at', () => {
    // a key of the browser's store has one reader and writer in device/, and that one these callers
    const callers = (name: string) => sources.filter((file) => code(file).includes(`${name}(`)).sort();
    expect(callers('browserPlayPlace')).toEqual(['src/state/play.svelte.ts']);
    // play only reads one word there
    expect(callers('browserDayPlace')).toEqual(['src/state/by-mouth.svelte.ts', 'src/state/day.svelte.ts']);
    expect(code('src/state/by-mouth.svelte.ts')).not.toMatch(/\.(write|putAside|clear)\(/);
    expect(callers('browserCardPlace').filter((file) => file.startsWith('src/state/'))).toEqual([
      'src/state/card.svelte.ts',
      'src/state/made-up.ts',
    ]);
  });

  it('what erasing looks into is each place of a child', () => {
    const looks = code('src/device/places-left.ts');
    const all = [
      ...[
        'cardKey',
        'cardUnreadKey',
        'databaseName',
        'dayKey',
        'dayUnreadKey',
        'familyKey',
        'familyUnreadKey',
      ],
      ...['playKey', 'playUnreadKey'],
    ];
    for (const place of all) expect(looks).toContain(`${place}()`);
    const keys = Object.keys(places).filter((name) => /(Key|databaseName)$/.test(name));
    expect(keys.sort()).toEqual(all);
    // and so is what ends with the made-up child
    for (const place of all) expect(code('src/device/made-up-place.ts')).toContain(`${place}()`);
  });
});
