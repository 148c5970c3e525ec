import { counted, list } from './plain.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** Words on buttons, headings and states. Those with figures or names are functions. */
export const SAY = {
  site: 'Tagstrip',
  siteLine: 'For people who build radios with tubes.',
  siteText: 'What each part of a tube circuit does, before it is soldered: volts and ripple, gain and headroom, turns and wire, what to buy, how to wire it, ' +
    'what your meter should read. All of it is worked on this device; after the first visit it needs no network.',
  begin: 'Where to begin',
  sheet: 'Sheet',
  done: 'Done',
  close: 'Close',
  notRead: 'Not read.',
  read: 'Read as',
  unhook: 'Unhook',
  change: 'Change',
  lower: 'next lower value',
  higher: 'next higher value',
  none: 'none',
  strip: {
    name: 'Calculators in use',
    build: 'The build',
    add: 'Add a calculator',
    rename: 'Name',
    remove: 'Remove',
    undo: 'Put it back',
    removed: (name: string): string => `${name} is off the strip.`,
    exceeded: 'a rating is exceeded',
    refused: 'a value is not read',
    waiting: 'waits for a value',
    open: 'open',
  },
  pin: {
    pin: 'Pin this',
    unpin: 'Unpin',
    pinned: 'Pinned',
    now: 'Now',
    difference: 'Difference',
    help: 'Keeps these curves and answers beside whatever you change next.',
    against: (what: string): string => `Against the pinned ${what}`,
  },
  headings: {
    answers: 'Answers',
    eachPosition: 'At each position',
    pictures: 'Pictures',
    values: 'Every value',
    listen: 'Hear it',
    worked: 'How this was worked',
    method: 'Method',
    holds: 'Holds for',
    checked: 'Checked against',
    source: 'Source',
    table: 'The same as a table of numbers',
    wiring: 'Wiring, pin by pin',
    parts: 'Parts',
    readings: 'Readings: is yours right?',
    readingsOnPaper: 'Readings',
    knownBy: 'How we know',
  },
  table: {
    part: 'Part', use: 'Use', value: 'Value', rating: 'Rating', fitted: 'Fitted', rule: 'Margin',
    point: 'Test point', pin: 'Pin', least: 'Least', expect: 'Expect', most: 'Most', yours: 'Yours', again: 'Again',
    usual: 'Nine in ten', yourMeter: 'Your meter reads', step: 'Step', from: 'From', to: 'To', by: 'By',
  },
  keys: { k: 'kilo', M: 'mega', '.': 'point', '±': 'tolerance in percent', p: 'pico', n: 'nano', 'µ': 'micro', '−': 'minus', m: 'milli', '%': 'percent' },
  file: {
    link: 'Copy the link',
    copied: 'The link is copied.',
    text: 'Copy as text',
    textCopied: 'The text is copied.',
    save: 'Save to a file',
    open: 'Open a file',
    print: 'Print',
    full: 'Open in full',
    reset: 'Start again',
    newer: (revision: number): string =>
      `This file is of a later form, number ${revision}. This page knows up to 1. Load the page anew, with a network, and open the file again.`,
    notOurs: 'This file is not a build of Tagstrip. Nothing was changed.',
    linkNotOurs: 'The link does not hold a build. The page starts from its own values.',
  },
  settings: {
    title: 'Units and words',
    look: 'Light or dark',
    system: 'as the device',
    light: 'light',
    dark: 'dark',
    length: 'Lengths in',
    wire: 'Wire in',
    mains: 'Mains',
    tube: 'You say',
    supply: 'The supply is',
    decimal: 'Decimals with a',
    resistor: 'Resistors drawn as',
    choices: {
      mm: 'millimetres', inch: 'inches', awg: 'AWG', swg: 'SWG', '50': '50 Hz', '60': '60 Hz', tube: 'tube', valve: 'valve',
      'B+': 'B+', HT: 'HT', point: 'point', comma: 'comma', zigzag: 'zigzags', box: 'boxes',
    },
  },
  plot: {
    cursor: 'Cursor',
    cursorHelp: 'Arrow keys move it along the axis; Home and End go to the ends.',
    atPlace: (place: string): string => `At ${place}`,
    figure: (number: number): string => `Fig. ${number}.`,
  },
  noscript: 'The figures are worked in the page, so it needs scripts. What the calculator does is told here.',
} as const;

/** The heading over greyed answers: "Last good answers, for R3 = 220k. They wait for R3." */
export function staleWords(waiting: readonly { readonly reference: string; readonly value: string }[]): string {
  if (waiting.length === 0) return 'Last good answers. They wait for a value.';
  const held = list(waiting.map(({ reference, value }) => (value === '' ? reference : `${reference} = ${value}`)));
  return `Last good answers, for ${held}. They wait for ${list(waiting.map(({ reference }) => reference))}.`;
}

/** The states of the page as a whole, each a sentence that says what it means and what to do. */
export const STATES = {
  offline: 'No network. Everything here works without one.',
  offlineReady: 'Kept on this device: it works without a network from now on.',
  update: 'A newer release is here. It comes in once every page of this site has been closed; nothing you typed is lost.',
  othersOpen: 'Other pages of this site are open. Close them, and the newer release can come in.',
  releaseLate: 'The newer release is let in, but the browser is not done with the old one. Close this page and open it again; nothing you typed is lost.',
  storageRefused: 'This browser keeps nothing for this page. Save to a file, or keep the link, before you close it.',
  storageFull: 'There is no room left to keep this build. Save it to a file.',
  otherTab: 'This build is open in another tab. What was changed last is what is kept.',
  loading: 'The engine is being fetched.',
  restarting: 'The engine stopped and is started again. Your values are all here.',
  engineMissing: 'The engine did not arrive. Load the page again when there is a network.',
  noSolution: 'These values have no answer together.',
  restored: 'Your values are as you left them.',
} as const;

/** The line under a test point table. */
export function readingsNote(meter: string, way: Way = USUAL_WAY): string {
  const loaded = meter === '' ? 'with your meter in place' : `with a ${meter} meter in place`;
  return told(`Volts dc to ground ${loaded}, which pulls some points down. Parts within their marks, mains ±5\u00a0%. No signal.`, way);
}

/** The line under a printed drawing. */
export function drawingNote(position: number | null, way: Way = USUAL_WAY): string {
  const drawn = position === null ? '' : ` Position ${position} drawn.`;
  return told(`Thick lines carry more than 60 V. Tags: volts to ground; at the output, signal.${drawn}`, way);
}

/** How many values are not read, for a screen reader. */
export function refusedCount(count: number): string {
  return count === 0 ? 'Every value is read.' : `${counted(count, 'value')} not read.`;
}
