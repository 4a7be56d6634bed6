import type { Plugin } from 'vite';

export function languageData(override?: { hideUnreviewed?: boolean }): {
  shown: string[];
  review: Record<string, Record<string, 'reviewed' | 'draft' | 'stale'>>;
};
export function languagesPlugin(): Plugin;
export function firstDrawingPlugin(): Plugin;
