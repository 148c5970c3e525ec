import type { Section } from './how-we-know.js';

/** What a piece of the suite weighs on the wire, in bytes, as the build weighed it. */
export interface Costs {
  readonly element: number;
  readonly frame: number;
  readonly frameScripts: number;
}

export const KEEPERS_TITLE = 'For web keepers';
export const KEEPERS_HOST = 'What this host sends';
export const KEEPERS_HOST_WAITS = 'This needs scripts: it asks the host for its own headers and for nothing else.';

const kilobytes = (bytes: number): string => `${Math.round(bytes / 1000)}\u00a0KB`;

/** The page for whoever keeps a club's pages: what to paste, what to allow, what it costs, where it stands. */
export function keepersSections(costs: Costs): readonly Section[] {
  return [
    {
      heading: 'What to paste',
      paragraphs: [
        'Open a calculator, put in the values that your readers should see, and open “Put it on a page” below the form. Three buttons copy the markup: a link, a frame, an element. In your site’s editor look for “HTML”, “source” or “embed code” and paste it there, not into the text.',
        'The link works everywhere. The frame needs an editor that takes frames. The element needs one that takes scripts; where the script is taken out, your readers still see a picture of the drawing, the danger in words, a table of the answers, and the link.',
        'Each points to the release that you copied it from, at an address that stays. A figure that you have published does not move when a newer release comes; to have the newer one, copy again.',
      ],
    },
    {
      heading: 'What to allow',
      paragraphs: [
        'The frame runs under sandbox="allow-scripts" alone. The markup also carries allow-popups and allow-popups-to-escape-sandbox, so that “Open in full” opens; take them out and everything else still works. A small script, holder.js, gives the frame the height that it asks for, and listens to no other window; without it the frame scrolls.',
        'If your pages send a Content-Security-Policy, the element needs this site’s address and \'wasm-unsafe-eval\' in script-src and data: in img-src for the picture; the frame needs this site’s address in frame-src, and in script-src for holder.js. Where trusted types are enforced, allow the policy named lit-html.',
        'Nobody is followed: no cookie, no storage in the element or the frame, no request to any other host. What a reader types stays in that reader’s page.',
        'The script is held to its hash by its integrity attribute. That works from another site only if this host sends Access-Control-Allow-Origin; below stands whether it does. If it does not, copy element.js to your own site and write its address in the markup: the hash then holds there.',
      ],
    },
    {
      heading: 'What it costs',
      paragraphs: [
        `The element: ${kilobytes(costs.element)} for the first on a page, once and for all, engine included; nothing for each further one. The frame: the same script and ${kilobytes(costs.frame + costs.frameScripts)} more, and the same again for each further one: shut off from your page, frames share nothing, not even what the browser keeps. For several on a page take the element. All are sizes as a host sends them packed. The link costs nothing.`,
      ],
    },
    {
      heading: 'How it looks',
      paragraphs: [
        'Your page’s styles do not reach in, and these do not reach out. The element takes the width of its column, from 280 px up. theme="dark" or theme="system" sets the ground. Colours and letters can be set from outside by custom properties, such as tag-strip { --tagstrip-paper: #f4f1e8; --tagstrip-touch: #1a4480 }: paper, plate, ink, ink-2, edge, rule, copper, live, touch, wash, book and instrument. Its pieces have part names: frame, title, lead, drawing, cautions, values, foot.',
        'Inputs are attributes by their path: plate_ohms="220k", positions.0.farads=".02", meter.range="250 V"; what is yes or no is written "~true" or "~false". position="2" turns the switch. Change an attribute and the answers follow. The element fires an event, answers, whose detail has calculator, inputs, answers, cautions and problems. A frame tells the same as a message {tagstrip: 1, answers: {…}}, and takes {tagstrip: 1, inputs: {…}} from the page around it.',
      ],
    },
    {
      heading: 'To have the whole site on your own host',
      paragraphs: [
        'Unpack the zip of a release into any folder of any host for static files: every address in it is relative. Unpack the next one over it and leave the folder v/ as it is, so that old releases stay where they were published. Two files of headers lie beside the pages, _headers and .htaccess; most hosts read one of them. Without either the pages work all the same; what is then missing is said below.',
      ],
    },
  ];
}

/** What a host should send, and what is lost where it does not. */
export const HOST_CHECKS = {
  policy: { says: 'Content-Security-Policy with frame-ancestors', without: 'The pages carry the policy themselves, but any site can put them into a frame.' },
  sniff: { says: 'X-Content-Type-Options: nosniff', without: 'A browser may guess at what a file is.' },
  origin: { says: 'Access-Control-Allow-Origin: *', without: 'Other pages cannot hold the element’s script to its hash; the copied markup then leaves the hash out.' },
  wasm: { says: 'application/wasm for the engine', without: 'The engine starts a little later.' },
  fresh: { says: 'Cache-Control: no-cache for service-worker.js', without: 'A new release may be noticed a day later.' },
} as const;

export const HOST_WORDS = {
  missing: 'missing',
  all: 'This host sends everything that is of use.',
  some: (count: number): string => `${count === 1 ? 'One thing is' : `${count} things are`} missing. All works without; this is what it would add:`,
  noHost: 'This page was not sent by a host.',
} as const;
