import { cardKey } from './note-place.ts';

/** The nurse's card on this device: its code as it was taken, so that what reads codes reads it back, too. */
export interface KeptCard {
  code: string;
  /** The nurse said "still right" then, in whole universal minutes. */
  confirmedAt?: number;
}

export interface CardPlace {
  read(): KeptCard | undefined;
  /** False where the browser refused, or gives back something else than was written. */
  write(card: KeptCard): boolean;
  /** False where it is still there. */
  clear(): boolean;
}

export function browserCardPlace(): CardPlace {
  function read(): KeptCard | undefined {
    try {
      const value: unknown = JSON.parse(localStorage.getItem(cardKey()) ?? 'null');
      if (typeof value !== 'object' || value === null) return undefined;
      const { code, confirmedAt } = value as Record<string, unknown>;
      if (typeof code !== 'string') return undefined;
      return { code, ...(Number.isSafeInteger(confirmedAt) && { confirmedAt: confirmedAt as number }) };
    } catch {
      return undefined;
    }
  }
  return {
    read,
    write(card) {
      try {
        localStorage.setItem(cardKey(), JSON.stringify(card));
        return read()?.code === card.code;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(cardKey());
        return localStorage.getItem(cardKey()) === null;
      } catch {
        return false;
      }
    },
  };
}
