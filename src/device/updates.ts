/** Offline use and new versions, as the pages ask the worker about them. */

const ASK_AGAIN_MS = 20_000;
const LOOK_FOR_NEW_MS = 60 * 60_000;

/** A new version waits until the reader takes it; it never reloads by itself. */
export interface Updates {
  /** Keeps a language's pages for use without network. */
  keepLanguage(locale: string): void;
  /** Calls when all that is to be kept is there; or `never`, where this browser lets no page keep anything. */
  onReady(listener: () => void, never: () => void): void;
  onNewVersion(listener: () => void): void;
  /** Lets the waiting version take over and loads the page anew. */
  useNewVersion(): void;
  /** Ends all listening. */
  stop(): void;
}

/** The worker of this browser; where it has none, nothing is kept and nothing new comes by itself. */
export function browserUpdates(): Updates {
  const container = 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
  // `ready` waits for the worker of a first visit, which is registered after the page has loaded
  const registration = container?.ready;
  const ending = new AbortController();
  const { signal } = ending;

  const tell = (message: object) => void registration?.then((r) => r.active?.postMessage(message));

  return {
    keepLanguage(locale) {
      tell({ type: 'keep-language', locale });
    },
    onReady(listener, never) {
      if (!container) return never();
      // the browser may stop the worker while it fills: asking wakes it, and it goes on where it was
      const ask = () => tell({ type: 'ask-ready' });
      const asking = setInterval(() => {
        ask();
        // refused, as some browsers do where nothing is to be kept; should it still come, the listener is called
        container.getRegistration().then((there) => there ?? never(), never);
      }, ASK_AGAIN_MS);
      const done = new AbortController();
      const end = () => {
        clearInterval(asking);
        done.abort();
      };
      signal.addEventListener('abort', end);
      addEventListener('online', ask, { signal: done.signal });
      container.addEventListener(
        'message',
        (event: MessageEvent<{ type?: string } | undefined>) => {
          if (event.data?.type !== 'ready-offline') return;
          end();
          listener();
        },
        { signal: done.signal },
      );
      ask();
    },
    onNewVersion(listener) {
      void registration?.then((r) => {
        if (signal.aborted) return;
        const watch = (coming: ServiceWorker | null) =>
          coming?.addEventListener(
            'statechange',
            () => {
              if (coming.state === 'installed' && r.active) listener();
            },
            { signal },
          );
        if (r.waiting) listener();
        watch(r.installing);
        r.addEventListener('updatefound', () => watch(r.installing), { signal });
        // a tablet at the bed may show one page for days: look for a new version when it is taken up again
        let looked = performance.now();
        document.addEventListener(
          'visibilitychange',
          () => {
            if (document.visibilityState !== 'visible' || performance.now() - looked < LOOK_FOR_NEW_MS)
              return;
            looked = performance.now();
            r.update().catch(() => undefined);
          },
          { signal },
        );
      });
    },
    useNewVersion() {
      if (!container) return;
      container.addEventListener('controllerchange', () => location.reload(), { once: true });
      void container.getRegistration().then((r) => {
        if (r?.waiting) r.waiting.postMessage({ type: 'take-over' });
        // another window has let it take over already
        else location.reload();
      });
    },
    stop() {
      ending.abort();
    },
  };
}
