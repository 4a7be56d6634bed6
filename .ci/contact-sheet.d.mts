/** The drawing's style sheets, as one text. */
export function sceneStyles(): string;
