/** Two phones for a browser test: codes of one held before the camera of the other, and fingers that stay down. */
import type { Locator, Page } from '@playwright/test';
import { codePicture } from '#device/code-picture.ts';

/** A code as squares, as a page draws it. */
export interface Code {
  size: number;
  path: string;
}
interface Frame extends Code {
  text: string;
}
export const codeOf = (text: string): Code => codePicture(text);

/** Opens the moving code and steps through its first pictures. */
export async function framesShown(page: Page, count: number): Promise<Frame[]> {
  await page.locator('[data-action="show"]').tap();
  const shown = page.locator('[data-frame]');
  await shown.waitFor();
  await page.locator('[data-pass="send"] [aria-pressed]').tap();
  const next = page.locator('[data-pass="send"] [aria-pressed] + button');
  const frames = new Map<number, Frame>();
  while (frames.size < count) {
    const frame = await shown.evaluate((box) => ({
      number: Number((box as HTMLElement).dataset.frame),
      text: (box as HTMLElement).dataset.frameText!,
      size: box.querySelector('svg')!.viewBox.baseVal.width,
      path: box.querySelector('path')!.getAttribute('d')!,
    }));
    frames.set(frame.number, frame);
    await next.tap();
  }
  return [...frames.values()];
}

/** Gives this page a camera before which the codes are held one after the other, over and over. Before `goto`. */
export async function filmCodes(page: Page, codes: readonly Code[]): Promise<void> {
  await page.addInitScript((held) => {
    navigator.mediaDevices.getUserMedia = async () => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [480, 480];
      const context = canvas.getContext('2d')!;
      let shown = 0;
      const draw = () => {
        const { size, path } = held[shown++ % held.length]!;
        context.resetTransform();
        // around the code a room, neither black nor white
        context.fillStyle = '#777';
        context.fillRect(0, 0, 480, 480);
        context.translate(20, 20);
        context.scale(440 / size, 440 / size);
        context.fillStyle = '#fff';
        context.fillRect(0, 0, size, size);
        context.fillStyle = '#000';
        context.fill(new Path2D(path));
      };
      draw();
      setInterval(draw, 250);
      return canvas.captureStream(10);
    };
  }, codes);
}

/** A finger on a button for so long, with whatever happens meanwhile. */
export async function fingerOn(button: Locator, milliseconds: number): Promise<void> {
  const page = button.page();
  await button.scrollIntoViewIfNeeded();
  const box = (await button.boundingBox())!;
  const touch = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const session = await page.context().newCDPSession(page);
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [touch] });
  await new Promise((resolve) => setTimeout(resolve, milliseconds));
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}
