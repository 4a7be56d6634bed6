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

export const CARD_KEY = 'bare-toes:card';

export function browserCardPlace(): CardPlace {
  function read(): KeptCard | undefined {
    try {
      const value: unknown = JSON.parse(localStorage.getItem(CARD_KEY) ?? 'null');
      if (typeof value !== 'object' || value === null) return undefined;
      const { code, confirmedAt } = value as Record<string, unknown>;
      if (typeof code !== 'string') return undefined;
      return { code, ...(typeof confirmedAt === 'number' && { confirmedAt }) };
    } catch {
      return undefined;
    }
  }
  return {
    read,
    write(card) {
      try {
        localStorage.setItem(CARD_KEY, JSON.stringify(card));
        return read()?.code === card.code;
      } catch {
        return false;
      }
    },
    clear() {
      try {
        localStorage.removeItem(CARD_KEY);
        return localStorage.getItem(CARD_KEY) === null;
      } catch {
        return false;
      }
    },
  };
}
