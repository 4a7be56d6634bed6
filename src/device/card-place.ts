/** The nurse's card on this device. */
import { jsonPlace, type JsonPlace } from './json-place.ts';
import { cardKey, cardUnreadKey } from './places.ts';

/** The card as its code was taken, so that what reads codes reads it back, too. */
export interface KeptCard {
  code: string;
  /** The nurse said "still right" then, in whole universal minutes. */
  confirmedAt?: number;
}

export interface CardPlace extends JsonPlace {
  read(): KeptCard | undefined;
  write(card: KeptCard): boolean;
  /** Whether something lies there that is no card. */
  damaged(): boolean;
}

/** The card in this browser, the made-up child's in a place of her own. */
export function browserCardPlace(): CardPlace {
  const place = jsonPlace(cardKey, cardUnreadKey);
  const read = () => {
    const value = place.read();
    if (typeof value !== 'object' || value === null) return undefined;
    const { code, confirmedAt } = value as Record<string, unknown>;
    if (typeof code !== 'string') return undefined;
    return { code, ...(Number.isSafeInteger(confirmedAt) && { confirmedAt: confirmedAt as number }) };
  };
  return { ...place, read, damaged: () => place.read() !== undefined && read() === undefined };
}
