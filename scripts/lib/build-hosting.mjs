// What hosts read beside the site: headers under the two file names that static hosts know, and the whole as a zip.
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';

import { filesUnder } from './sizes.mjs';
import { zipped } from './zip.mjs';

/** Pages that another site may not put in a frame; `frame/` is there to be put in one. */
const pagesOf = (catalogue) => ['how-we-know', 'for-your-page', ...catalogue.map(({ id }) => id)];

/** For hosts that read `_headers`. A name of a file changes with what is in it, so that it can be kept for good. */
function headers({ POLICY }, catalogue, release) {
  const places = ['/', `/v/${release}/`];
  const shut = places.flatMap((place) => [place, ...pagesOf(catalogue).map((id) => `${place}${id}/*`)]);
  return `/*
  X-Content-Type-Options: nosniff
  Referrer-Policy: no-referrer
  Access-Control-Allow-Origin: *
${shut.map((path) => `${path}\n  Content-Security-Policy: ${POLICY}; frame-ancestors 'self'\n`).join('')}${places.map((place) => `${place}service-worker.js
  Cache-Control: no-cache
${place}element.js
  Cache-Control: ${place === '/' ? 'no-cache' : KEPT}
${place}assets/*
  Cache-Control: ${KEPT}
`).join('')}`;
}

const KEPT = 'public, max-age=31536000, immutable';

/** For Apache, which reads a file in each folder. */
function htaccess(policy) {
  return `AddType application/wasm .wasm
AddType text/javascript .js
AddType application/manifest+json .webmanifest
<IfModule mod_headers.c>
  Header set X-Content-Type-Options "nosniff"
  Header set Referrer-Policy "no-referrer"
  Header set Access-Control-Allow-Origin "*"
  Header set Content-Security-Policy "${policy}"
  <FilesMatch "-[0-9A-Za-z]{8,}\\.(js|css|wasm)$">
    Header set Cache-Control "${KEPT}"
  </FilesMatch>
  <FilesMatch "^(service-worker|element)\\.js$">
    Header set Cache-Control "no-cache"
  </FilesMatch>
</IfModule>
<IfModule mod_deflate.c>
  AddOutputFilterByType DEFLATE text/html text/css text/javascript application/wasm application/json image/svg+xml
</IfModule>
`;
}

/** Puts the release at its own path too, then the hosts' files, then all of it into a zip. */
export function buildHosting(dist, release, { catalogue, pages }) {
  const site = join(dist, 'site');
  const aside = join(dist, 'release');
  writeFileSync(join(site, '.htaccess'), htaccess(`${pages.POLICY}; frame-ancestors 'self'`));
  // The page for a frame carries its own policy; the one of the folder above would keep it out of every frame.
  writeFileSync(join(site, 'frame/.htaccess'), '<IfModule mod_headers.c>\n  Header unset Content-Security-Policy\n</IfModule>\n');
  cpSync(site, aside, { recursive: true });
  cpSync(aside, join(site, 'v', release), { recursive: true });
  rmSync(aside, { recursive: true });
  writeFileSync(join(site, '_headers'), headers(pages, catalogue, release));
  const files = filesUnder(site).map((file) => ({ name: relative(site, file), body: readFileSync(file) }));
  writeFileSync(join(dist, `tagstrip-site-${release}.zip`), zipped(files));
}
