/** The rules at this bed. Apart from the family's choices, so that the first page need not load the ward's file. */
import { WARD, type WardSettings } from '#content/ward.ts';
import { currentFamily } from './family.svelte.ts';

/** The ward's rules with what the nurse's card says for this bed. */
export const bedsideWard = (): WardSettings => ({ ...WARD, ...currentFamily().bed });
