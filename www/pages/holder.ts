/** On the page around a frame: gives each frame of ours the height that it tells. What any other window says is passed over. */
const MOST = 20_000;
const site = new URL('..', (document.currentScript as HTMLScriptElement).src).href;

addEventListener('message', ({ source, data }: MessageEvent<unknown>) => {
  const frame = [...document.querySelectorAll<HTMLIFrameElement>('iframe[data-tagstrip]')].find((each) => each.contentWindow === source);
  const told = typeof data === 'object' && data !== null ? (data as { tagstrip?: unknown; height?: unknown }) : {};
  if (frame === undefined || !frame.src.startsWith(site) || told.tagstrip !== 1) return;
  const height = Number(told.height);
  if (height > 0 && height < MOST) frame.height = String(Math.ceil(height));
});
