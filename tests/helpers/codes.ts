/** Codes as the other phone meets them: cards as letters, and pictures of the screen read by an outside decoder. */
import path from 'node:path';
import type { BrowserContext, Locator } from '@playwright/test';
import { START_CARD, type BedCard } from '#domain/bed-card/card.ts';
import { checkOf, CHECK, lettersOf, written } from '#domain/bed-card/letters.ts';
import { instant, minutes } from '#domain/units.ts';
import { root } from './locales.ts';

/** A card as a nurse made it at this moment, in London in winter; what is not given is as the form starts with. */
export function cardMade(at: Date, change: Partial<BedCard> = {}): BedCard {
  return {
    ...START_CARD,
    side: 'left',
    bell: 'button',
    secondStep: 'call-out',
    wardLanguage: 'en',
    madeAt: instant(Math.floor(at.getTime() / 60_000)),
    off: minutes(0),
    ...change,
  };
}

/** The same letters as a later version would begin them, with a check that fits. */
export function ofLaterVersion(code: string): string {
  const [version, ...rest] = lettersOf(code).slice(0, -CHECK);
  const content = [version! + 1, ...rest];
  return written([...content, ...checkOf(content)]);
}

/**
 * What an outside decoder reads in a picture of this place on the screen.
 * Source: jsqr 1.4, which shares nothing with what draws the codes.
 */
export async function readFromScreen(context: BrowserContext, place: Locator): Promise<string | undefined> {
  const picture = (await place.screenshot()).toString('base64');
  const reader = await context.newPage();
  await reader.addScriptTag({ path: path.join(root, 'node_modules/jsqr/dist/jsQR.js') });
  const text = await reader.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const pen = canvas.getContext('2d')!;
    pen.drawImage(image, 0, 0);
    const { data, width, height } = pen.getImageData(0, 0, image.width, image.height);
    type Read = (data: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
    return (window as unknown as { jsQR: Read }).jsQR(data, width, height)?.data;
  }, picture);
  await reader.close();
  return text;
}
