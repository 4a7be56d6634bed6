/** Hands a file or a link out of the phone: by the share sheet where there is one, else as a download or a copy. */

export type Shared =
  /**
   * `shared`: given to another program, which may still fail. `saved`: the browser was asked to save it, and nobody can
   * see whether it did.
   */
  { ok: true; how: 'shared' | 'saved' } | NotShared;
export interface NotShared {
  ok: false;
  /** `closed`: the reader closed the sheet. `refused`: the browser would not. */
  reason: 'closed' | 'refused';
}
/** `copied`: it can be pasted into a message. */
export type LinkShared = { ok: true; how: 'shared' | 'copied' } | NotShared;

export interface Sharing {
  /** Must be called straight from a tap, or browsers refuse. */
  file(name: string, text: string, type?: string): Promise<Shared>;
  /** Must be called straight from a tap, too. */
  link(address: string): Promise<LinkShared>;
}

/** Kept for so long, since a phone may ask where to save before it reads. */
const KEPT_MS = 60_000;

const named = (error: unknown) => (error instanceof Error ? error.name : '');

/** The share sheet of this browser, where it has one. */
export function browserSharing(): Sharing {
  return {
    async file(name, text, type = 'text/plain') {
      const data = { files: [new File([text], name, { type })] };
      if (typeof navigator.share === 'function' && navigator.canShare?.(data)) {
        try {
          await navigator.share(data);
          return { ok: true, how: 'shared' };
        } catch (error) {
          if (named(error) === 'AbortError') return { ok: false, reason: 'closed' };
          // a sheet that will not take it is no reason to keep the file from the family
        }
      }
      return save(data.files[0]!);
    },
    async link(address) {
      if (typeof navigator.share === 'function') {
        try {
          await navigator.share({ url: address });
          return { ok: true, how: 'shared' };
        } catch (error) {
          if (named(error) === 'AbortError') return { ok: false, reason: 'closed' };
        }
      }
      try {
        await navigator.clipboard.writeText(address);
        return { ok: true, how: 'copied' };
      } catch {
        return { ok: false, reason: 'refused' };
      }
    },
  };
}

function save(file: File): Shared {
  try {
    const address = URL.createObjectURL(file);
    const link = document.createElement('a');
    link.href = address;
    link.download = file.name;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
    return { ok: true, how: 'saved' };
  } catch {
    return { ok: false, reason: 'refused' };
  }
}
