/** A browser's database without a browser. */

/** As much of IndexedDB as idb-keyval asks for: one table, whole requests one after the other. */
export function fakeIndexedDB(
  rows: Map<IDBValidKey, unknown>,
  refuse: (what: 'open' | 'put') => string | undefined,
  /** Whether the browser still has the database. */
  there = () => true,
) {
  interface Asked<T> {
    result?: T;
    error?: unknown;
    onsuccess?: (() => void) | null;
    onerror?: (() => void) | null;
    oncomplete?: (() => void) | null;
    onabort?: (() => void) | null;
  }
  const later = (run: () => void) => queueMicrotask(run);
  const answer = <T>(result: T): Asked<T> => {
    const asked: Asked<T> = { result };
    later(() => asked.onsuccess?.());
    return asked;
  };
  const refused = (error: unknown): Asked<never> => {
    const asked: Asked<never> = { error };
    later(() => (asked.onerror ?? asked.onabort)?.());
    return asked;
  };
  const table = () => {
    const transaction: Asked<void> = {};
    let requests = 0;
    /** As in a browser: it is complete when nothing was asked for a while. */
    const idle = (seen: number, turns = 5): void => {
      if (seen !== requests) later(() => idle(requests));
      else if (turns > 0) later(() => idle(seen, turns - 1));
      else transaction.oncomplete?.();
    };
    later(() => idle(requests));
    const asked = <T>(result: T): Asked<T> => {
      requests += 1;
      return answer(result);
    };
    return {
      transaction,
      get: (key: IDBValidKey) => asked(structuredClone(rows.get(key))),
      put(value: unknown, key: IDBValidKey) {
        const name = refuse('put');
        if (name) {
          transaction.error = new DOMException('no', name);
          later(() => transaction.onabort?.());
        } else {
          requests += 1;
          rows.set(key, structuredClone(value));
        }
        return transaction;
      },
      clear() {
        rows.clear();
        return transaction;
      },
      getAll: () => asked([...rows.values()].map((value) => structuredClone(value))),
      getAllKeys: () => asked([...rows.keys()]),
    };
  };
  return {
    open(): Asked<unknown> {
      const name = refuse('open');
      if (name) return refused(new DOMException('no', name));
      const database = { transaction: () => ({ objectStore: table }), onclose: null };
      if (there()) return answer(database);
      const asked: Asked<unknown> & { onupgradeneeded?: () => void } = {
        result: { ...database, createObjectStore: () => table() },
      };
      later(() => {
        asked.onupgradeneeded?.();
        later(() => asked.onsuccess?.());
      });
      return asked;
    },
  };
}
