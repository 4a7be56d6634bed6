/** A store that does not answer at all must not leave the page waiting: it counts as broken. */

const ANSWER_MILLISECONDS = 3000;
export class NoAnswer extends Error {}

/**
 * What comes of the work, if it comes within three seconds.
 * Errors: `NoAnswer` after that; whatever the work itself throws.
 */
export async function inTime<T>(work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new NoAnswer('device: no answer')), ANSWER_MILLISECONDS);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
