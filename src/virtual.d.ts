/** Made by .ci/languages-plugin.mjs from locales/ and the ward's settings. */
declare module 'virtual:languages' {
  export const shown: readonly string[];
  export const review: Readonly<Record<string, Readonly<Record<string, 'reviewed' | 'draft' | 'stale'>>>>;
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
