import { EMBED } from '../words/embed-words.js';
import { SAY } from '../words/index.js';

/** What the page in a frame loads: two scripts of this site and its style sheet; nothing that a sandbox would keep from it. */
export const FRAME_POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  'img-src data:',
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types lit-html',
].join('; ');

/** The page that a frame on somebody's page shows. Modules and fetches would need a header of the host; plain scripts do not. */
export function framePage(script: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${FRAME_POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${SAY.site}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="frame.css">
<script defer src="../element.js"></script>
<script defer src="${script}"></script>
</head>
<body>
<tag-strip><noscript><p>${EMBED.without} <a href="../">${SAY.site}</a></p></noscript></tag-strip>
</body>
</html>
`;
}
