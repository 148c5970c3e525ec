import type { TsApp } from '../elements/app/ts-app.js';

/**
 * Keeps the site on the device. A newer release waits until it is asked in, or until every page of this one is closed;
 * the page says that it is there. Where this cannot be had (a sandbox, a refusal of storage) the page works as long as
 * there is a network.
 */
export async function keepOnDevice(address: URL, app: TsApp): Promise<void> {
  // The type says string; under trusted types only the policy's own object will do.
  const registration = await navigator.serviceWorker.register(address as unknown as string);
  const offer = (): void => { app.say('update', () => { takeIn(registration, app); }); };
  if (registration.waiting !== null) offer();
  const watch = (): void => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active !== null) offer();
      // Installed means that every file is here and is what it should be; this is said of nothing less.
      if (coming.state === 'activated' && navigator.serviceWorker.controller === null) app.say('offlineReady');
    });
  };
  watch();
  registration.addEventListener('updatefound', watch);
}

/** Chromium lets a release in only when what closed pages asked for has ended, which can be minutes. */
const LATE_MILLISECONDS = 4000;

/** Asks the newer release in: the page is loaded anew with it. With another page open it stays where it is. */
function takeIn(registration: ServiceWorkerRegistration, app: TsApp): void {
  const { port1, port2 } = new MessageChannel();
  const refused = new AbortController();
  // Before it is asked: the change of releases may be told sooner than the answer.
  navigator.serviceWorker.addEventListener('controllerchange', () => { location.reload(); }, { once: true, signal: refused.signal });
  port1.onmessage = (event: MessageEvent<unknown>) => {
    if (event.data === true) {
      setTimeout(() => { app.say('releaseLate'); }, LATE_MILLISECONDS);
      return;
    }
    refused.abort();
    app.say('othersOpen');
  };
  registration.waiting?.postMessage('come in', [port2]);
}
