/** What a version of this site cannot read is put aside before anything is written in its place. */

/**
 * Keeps a copy of the text that lies under a name beside it, each text once.
 * Shape: beside it stands a list of texts as JSON, in the order in which they came.
 * Errors: none thrown; false where the browser refused, and then nothing may be written over the text.
 */
export function putAside(name: string, beside: string): boolean {
  try {
    const text = localStorage.getItem(name);
    if (text === null) return true;
    const before = textsIn(localStorage.getItem(beside));
    if (before.includes(text)) return true;
    const list = JSON.stringify([...before, text]);
    localStorage.setItem(beside, list);
    return localStorage.getItem(beside) === list;
  } catch {
    return false;
  }
}

function textsIn(kept: string | null): string[] {
  if (kept === null) return [];
  try {
    const list: unknown = JSON.parse(kept);
    if (Array.isArray(list) && list.every((one) => typeof one === 'string')) return list;
  } catch {
    // what lies there is itself kept as one text
  }
  return [kept];
}
