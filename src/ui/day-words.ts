/** How the child's day is written out: names of its parts, what moved and why, and what is read aloud. */
import { isFiller, type DayEventId, type FillerId } from '#domain/day/ids.ts';
import type { Doors } from '#domain/day/doors.ts';
import type { Explained, Tile } from '#domain/day/tiles.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import type { Words } from '#i18n/words.ts';
import { ideaById, ideaName } from './play-words.ts';

type Named = Pick<Tile, 'kind' | 'ideas'>;

/** The idea that is played, where there is one that has a name. */
const ideaOf = ({ kind, ideas }: Named, own: PlayBed['own']): string | undefined =>
  kind === 'play' ? ideas?.find((id) => ideaById(id) || own.some((one) => one.id === id)) : undefined;

/** The name of what may stand in a day. */
export const dayEventName = ({ t }: Words, kind: DayEventId): string => t(`day:event.${kind}`);

/** The name of a part of the day: the idea that is played, or what it is. */
export function tileName(words: Words, tile: Named, own: PlayBed['own'] = []): string {
  const idea = ideaOf(tile, own);
  return idea ? ideaName(words, idea, own) : dayEventName(words, tile.kind);
}

/** The idea whose picture stands for this part; an own idea has none. */
export const pictureIdea = ({ kind, ideas }: Named): string | undefined =>
  kind === 'play' ? ideas?.find((id) => ideaById(id)) : undefined;

/** What came first, where it may be told and says more than that no room was left. */
export function cameFirst(
  { why, by }: Explained,
  kindOf: (id: string) => DayEventId | undefined,
): Exclude<DayEventId, FillerId> | undefined {
  const first = by === undefined ? undefined : kindOf(by);
  const says = why === 'came-first' || why === 'no-room';
  return first !== undefined && says && !isFiller(first) ? first : undefined;
}

/** Food that may not come yet is not gone: it waits for a nurse's word. */
export const waits = ({ how, why }: Explained): boolean => how === 'left-out' && why === 'no-eating';

/** Two short sentences: where it is now, and what came first. */
export function movedWords(
  { t }: Words,
  moved: Explained,
  kindOf: (id: string) => DayEventId | undefined,
): { where: string; why: string } {
  const { how, why, was, is } = moved;
  const first = cameFirst(moved, kindOf);
  const where =
    how === 'moved' && is ? t(`day:moved.${is.from > was.from ? 'later' : 'earlier'}`) : undefined;
  return {
    where: where ?? t(`day:moved.${waits(moved) ? 'waits' : how === 'moved' ? 'later' : how}`),
    why: first ? t(`day:first.${first}`) : t(`day:moved.why.${why}`),
  };
}

/** What a voice reads of the doors, one sentence each. */
export function doorsAloud(words: Words, doors: Doors, own: PlayBed['own'] = []): string[] {
  const { t } = words;
  const say = (door: 'now' | 'next' | 'later', tile: Tile | undefined) =>
    tile ? [`${t(`day:doors.${door}`)}: ${tileName(words, tile, own)}.`] : [];
  return [...say('now', doors.now?.tile), ...say('next', doors.next), ...say('later', doors.later)];
}
