import type { ParamMatcher } from '@sveltejs/kit';

/** Areas that have their address already and say plainly that they are not there yet. */
export const COMING = ['our-day'] as const;
export type ComingArea = (typeof COMING)[number];

export const match: ParamMatcher = (param) => COMING.some((area) => area === param);
