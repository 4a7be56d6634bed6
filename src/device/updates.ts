/** Offline use and new versions. A new version waits until the reader takes it; it never reloads by itself. */
export interface Updates {
  /** Keeps a language's pages for use without network. */
  keepLanguage(locale: string): void;
  onReady(listener: () => void): void;
  onNewVersion(listener: () => void): void;
  /** Lets the waiting version take over and loads the page anew. */
  useNewVersion(): void;
}

export function browserUpdates(): Updates {
  const container = 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
  const registration = container?.ready;
  return {
    keepLanguage(locale) {
      void registration?.then((r) => r.active?.postMessage({ type: 'keep-language', locale }));
    },
    onReady(listener) {
      container?.addEventListener('message', (event: MessageEvent<{ type?: string }>) => {
        if (event.data?.type === 'ready-offline') listener();
      });
      void registration?.then((r) => r.active?.postMessage({ type: 'ask-ready' }));
    },
    onNewVersion(listener) {
      void container?.getRegistration().then((r) => {
        if (!r) return;
        if (r.waiting && r.active) listener();
        r.addEventListener('updatefound', () => {
          const coming = r.installing;
          coming?.addEventListener('statechange', () => {
            if (coming.state === 'installed' && r.active) listener();
          });
        });
      });
    },
    useNewVersion() {
      container?.addEventListener('controllerchange', () => location.reload(), { once: true });
      void container?.getRegistration().then((r) => r?.waiting?.postMessage({ type: 'take-over' }));
    },
  };
}
