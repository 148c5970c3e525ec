import { trustedTypesOf } from './trusted-types.js';

/** Only scripts of this release, beside this one, may become a worker. */
const policy = trustedTypesOf(globalThis)?.createPolicy('tagstrip', { createScriptURL: own });

function own(address: string): string {
  const url = new URL(address, import.meta.url);
  const site = new URL('..', import.meta.url);
  if (url.origin !== site.origin || !url.pathname.startsWith(site.pathname)) throw new TypeError('not of this site');
  return url.href;
}

/** The address of a script of ours, as a worker takes it. */
export function scriptAddress(relative: string): URL {
  return (policy === undefined ? own(relative) : policy.createScriptURL(relative)) as URL;
}
