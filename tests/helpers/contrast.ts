/**
 * Contrast of two colours. Source: WCAG 2.2, relative luminance and contrast ratio: 0.2126 R + 0.7152 G +
 * 0.0722 B of linear light (threshold 0.04045, exponent 2.4), then (lighter + 0.05) / (darker + 0.05).
 */
const channels = (hex: string): number[] => {
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(hex);
  const full = short
    ? `#${short
        .slice(1)
        .map((c) => c + c)
        .join('')}`
    : hex;
  if (!/^#[0-9a-f]{6}$/i.test(full))
    throw new Error(`helpers/contrast: three or six hex digits, saw "${hex}"`);
  return [1, 3, 5].map((i) => parseInt(full.slice(i, i + 2), 16) / 255);
};

/** 0 (black) to 1 (white). */
export function luminance(hex: string): number {
  const [r, g, b] = channels(hex).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

/** 1 (alike) to 21 (black on white), whichever comes first; never rounded. */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}
