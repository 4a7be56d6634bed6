/** Asks the browser to keep this site's data even when the device runs full. */
export type Lasting = 'asked' | 'refused';

/** `asked`: the browser will keep it until someone erases it; `refused`: it may clear it, or does not say. */
export async function askToKeep(): Promise<Lasting> {
  try {
    return (await navigator.storage.persisted()) || (await navigator.storage.persist()) ? 'asked' : 'refused';
  } catch {
    return 'refused';
  }
}
