// How a day is written out, with a translator that gives back its keys.
import { describe, expect, it } from 'vitest';
import { DAY_EVENT_IDS, isFiller } from '#domain/day/ids.ts';
import type { Explained } from '#domain/day/tiles.ts';
import { instant } from '#domain/units.ts';
import type { Words } from '#i18n/words.ts';
import { cameFirst, tileName } from '#ui/day-words.ts';

const words = { locale: 'en', t: (key: string) => key, review: 'reviewed' } as unknown as Words;

describe('the name of a part of the day', () => {
  it('is that of the idea that is played, and never the id of an idea that this version does not know', () => {
    expect(tileName(words, { kind: 'play', ideas: ['hum-guess'] })).toBe('ideas:hum-guess.name');
    for (const ideas of [['of-a-later-version'], ['own-1'], [], undefined])
      expect(tileName(words, { kind: 'play', ...(ideas && { ideas }) })).toBe('day:event.play');
    expect(tileName(words, { kind: 'play', ideas: ['of-a-later-version', 'hum-guess'] })).toBe(
      'ideas:hum-guess.name',
    );
  });
});

describe('what came first', () => {
  const span = { from: instant(0), to: instant(30) };
  const moved = (why: Explained['why'], by?: string): Explained => ({
    ...{ event: 'wash', kind: 'wash', how: 'moved', was: span, is: span, why },
    ...(by === undefined ? {} : { by }),
  });

  it('is said where it may be told and is a part of the day of its own', () => {
    for (const kind of DAY_EVENT_IDS)
      expect(cameFirst(moved('came-first', 'x'), () => kind)).toBe(isFiller(kind) ? undefined : kind);
    expect(cameFirst(moved('no-room', 'x'), () => 'x-ray')).toBe('x-ray');
    expect(cameFirst(moved('came-first', 'x'), () => undefined)).toBeUndefined();
    expect(cameFirst(moved('came-first'), () => 'x-ray')).toBeUndefined();
    expect(cameFirst(moved('ward-said', 'x'), () => 'x-ray')).toBeUndefined();
  });
});
