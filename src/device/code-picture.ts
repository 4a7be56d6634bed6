/** Squares of a code picture, made with uqr. */
import { encode } from 'uqr';

export interface CodePicture {
  /** Modules on a side, with the quiet edge of four that a camera needs (ISO/IEC 18004). */
  size: number;
  /** One SVG path over all dark modules, in modules. */
  path: string;
}

const QUIET = 4;

/**
 * Draws a text or bytes as a square code with medium correction.
 * Errors: throws where the content is larger than a code can hold.
 */
export function codePicture(content: string | Uint8Array): CodePicture {
  const { size, data } = encode(typeof content === 'string' ? content : [...content], {
    ecc: 'M',
    border: QUIET,
  });
  let path = '';
  data.forEach((row, y) => {
    for (let x = 0; x < size; x++) {
      if (!row[x]) continue;
      const start = x;
      while (x < size && row[x]) x++;
      path += `M${start} ${y}h${x - start}v1h${start - x}z`;
    }
  });
  return { size, path };
}
