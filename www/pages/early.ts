import { ask } from './soon.js';

// The engine is asked for when the page's script is nearly in: sooner they would share the line, later it would stand idle.
const names = document.querySelector<HTMLScriptElement>('script[data-fetch]')?.dataset['fetch'] ?? '';
ask(names.split(' ').map((name) => new URL(name, document.baseURI).href));

/** Where it is kept that this page was loaded anew already. */
const TRIED = 'tagstrip loaded anew';

/**
 * The page's own script may fail to come in, as where the browser stops the service worker that has its request in hand.
 * Then the page is loaded anew, once, as a person would; after that it says so. With no network and nothing kept, what can
 * be read here is better than the browser's word that it finds nothing.
 */
function whole(): void {
  const app = document.querySelector('ts-app');
  if (app?.matches(':defined') !== false) {
    tried(null);
  } else if ((navigator.onLine || navigator.serviceWorker?.controller) && tried(location.href)) {
    location.reload();
  } else {
    const said = document.createElement('p');
    said.setAttribute('role', 'alert');
    said.textContent = 'The part of this page that works the figures did not come in. Load the page again.';
    app.firstElementChild?.prepend(said);
  }
}

/** Keeps where a page is loaded anew, or forgets it; whether that is new. */
function tried(where: string | null): boolean {
  try {
    const before = sessionStorage.getItem(TRIED);
    if (where === null) sessionStorage.removeItem(TRIED);
    else sessionStorage.setItem(TRIED, where);
    return where !== null && before !== where;
  } catch {
    return false;
  }
}

if (document.readyState === 'complete') whole();
else addEventListener('load', whole);
