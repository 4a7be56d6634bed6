/** Where the turns of a leg bandage end, put on from the foot towards the knee. */

/**
 * Places of the free edges between the two ends of a bandage. Each turn covers half of the one below it, so the
 * edges stand one `pitch` apart, half a bandage's width; only the last turn, at the knee, shows its whole width.
 *
 * Shape: from the knee end towards the foot end, both ends left out. The pitch gives way a little, so that the
 * turns fill the length.
 * @example turnEdges(0, 100, 20) // [40, 60, 80]
 */
export function turnEdges(knee: number, foot: number, pitch: number): number[] {
  const halves = Math.max(3, Math.round((foot - knee) / pitch));
  const own = (foot - knee) / halves;
  return Array.from({ length: halves - 2 }, (_, i) => knee + own * (i + 2));
}
