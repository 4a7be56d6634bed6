/** Made by .ci/languages-plugin.mjs from locales/ and the ward's settings. */
declare module 'virtual:languages' {
  export const shown: readonly string[];
  export const review: Readonly<Record<string, Readonly<Record<string, 'reviewed' | 'draft' | 'stale'>>>>;
}

/** The review states of all areas that are no part of a first load. */
declare module 'virtual:review-of-the-rest' {
  export { review } from 'virtual:languages';
}

/** Draws at prerender; a blank in the browser (an empty text would end hydration), where the drawing is already in the page. */
declare module 'virtual:first-drawing' {
  import type { SceneSpec } from '#scene/spec.ts';
  import type { ThingId } from '#scene/things.ts';
  export function sceneMarkup(
    spec: SceneSpec,
    label: string,
    spotLinks?: Readonly<Record<string, string>>,
  ): string;
  export function thingMarkup(id: ThingId, label: string): string;
}
