// Asks for the engine when the page's script is nearly in: sooner they would share the line, later it would stand idle.
const names = document.querySelector<HTMLScriptElement>('script[data-fetch]')?.dataset['fetch'] ?? '';
for (const name of names.split(' ').filter((each) => each !== '')) {
  const link = document.createElement('link');
  Object.assign(link, { rel: 'preload', as: 'fetch', crossOrigin: 'anonymous', href: name });
  document.head.append(link);
}
