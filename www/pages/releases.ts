import type { TsApp } from '../elements/app/ts-app.js';

/**
 * Keeps the site on the device. A newer release waits until every page of this one is closed; the page says that it is
 * there. Where this cannot be had (a sandbox, a refusal of storage) the page works as long as there is a network.
 */
export async function keepOnDevice(address: URL, app: TsApp): Promise<void> {
  // The type says string; under trusted types only the policy's own object will do.
  const registration = await navigator.serviceWorker.register(address as unknown as string);
  if (registration.waiting !== null) app.say('update');
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active !== null) app.say('update');
      if (coming.state === 'activated' && navigator.serviceWorker.controller === null) app.say('offlineReady');
    });
  });
}
