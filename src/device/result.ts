/** A device can always say no. The page then says so too. */
export type DeviceFailure = 'blocked' | 'full' | 'broken';
export type Result<T> = { ok: true; value: T } | { ok: false; reason: DeviceFailure };

/** It was done, and this came of it. */
export const done = <T>(value: T): Result<T> => ({ ok: true, value });
/** It was not done, and why. */
export const failed = (reason: DeviceFailure): Result<never> => ({ ok: false, reason });

/** What a browser's refusal means for the reader. */
export function reasonOf(error: unknown): DeviceFailure {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  if (name === 'SecurityError' || name === 'InvalidStateError' || name === 'NotAllowedError')
    return 'blocked';
  return 'broken';
}
