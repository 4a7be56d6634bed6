/** What to do when nobody comes; each id has its words in the area `look`. */
export const SECOND_STEPS = ['call-out', 'go-to-desk', 'second-button', 'emergency-pull'] as const;
export type SecondStepId = (typeof SECOND_STEPS)[number];
