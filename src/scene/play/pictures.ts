/** Any picture of play by what it stands for; what has none of its own, such as an own idea, has no picture. */
import { IDEA_PICTURE_IDS } from './ideas.ts';
import { ideaMarkup, momentMarkup, playThingMarkup } from './markup.ts';
import { MOMENT_PICTURE_IDS } from './moments.ts';
import { PLAY_THINGS } from './compose.ts';

/** A small picture of play as SVG text; an empty text for what has no picture. */
export function pictureOf(
  what: { idea: string } | { thing: string } | { moment: string },
  label: string,
): string {
  if ('idea' in what) {
    const id = IDEA_PICTURE_IDS.find((one) => one === what.idea);
    return id ? ideaMarkup(id, label) : '';
  }
  if ('thing' in what)
    return what.thing in PLAY_THINGS ? playThingMarkup(what.thing as keyof typeof PLAY_THINGS, label) : '';
  const id = MOMENT_PICTURE_IDS.find((one) => one === what.moment);
  return id ? momentMarkup(id, label) : '';
}
