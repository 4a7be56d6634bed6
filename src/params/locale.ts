import type { ParamMatcher } from '@sveltejs/kit';
import { isLocale } from '#i18n/locales.ts';

/** An address begins with a language that this build shows. */
export const match: ParamMatcher = (param) => isLocale(param);
