/** How the child's day is written out: names of its parts, what moved and why, and what is read aloud. */
import type { DayEventId } from '#domain/day/ids.ts';
import { isFiller } from '#domain/day/ids.ts';
import type { Doors } from '#domain/day/doors.ts';
import type { Explained, Tile } from '#domain/day/tiles.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import type { Words } from '#i18n/words.ts';
import { ideaById, ideaName } from './play-words.ts';

type Named = Pick<Tile, 'kind' | 'ideas'>;

/** The idea that is played, where there is one that has a name. */
const ideaOf = ({ kind, ideas }: Named, own: PlayBed['own']): string | undefined =>
  kind === 'play' ? ideas?.find((id) => ideaById(id) || own.some((one) => one.id === id)) : undefined;

/** The name of a part of the day: the idea that is played, or what it is. */
export function tileName(words: Words, tile: Named, own: PlayBed['own'] = []): string {
  const idea = ideaOf(tile, own);
  return idea ? ideaName(words, idea, own) : words.t(`day:event.${tile.kind}`);
}

/** The idea whose picture stands for this part; an own idea has none. */
export const pictureIdea = ({ kind, ideas }: Named): string | undefined =>
  kind === 'play' ? ideas?.find((id) => ideaById(id)) : undefined;

/** Two short sentences: where it is now, and what came first. */
export function movedWords(
  { t }: Words,
  { how, why, was, is, by }: Explained,
  kindOf: (id: string) => DayEventId | undefined,
): { where: string; why: string } {
  const first = by === undefined ? undefined : kindOf(by);
  const where =
    how === 'moved' && is ? t(`day:moved.${is.from > was.from ? 'later' : 'earlier'}`) : undefined;
  return {
    where: where ?? t(`day:moved.${how === 'moved' ? 'later' : how}`),
    why:
      first && !isFiller(first) && (why === 'came-first' || why === 'no-room')
        ? t(`day:first.${first}`)
        : t(`day:moved.why.${why}`),
  };
}

/** What a voice reads of the doors, one sentence each. */
export function doorsAloud(words: Words, doors: Doors, own: PlayBed['own'] = []): string[] {
  const { t } = words;
  const say = (door: 'now' | 'next' | 'later', tile: Tile | undefined) =>
    tile ? [`${t(`day:doors.${door}`)}: ${tileName(words, tile, own)}.`] : [];
  return [...say('now', doors.now?.tile), ...say('next', doors.next), ...say('later', doors.later)];
}
