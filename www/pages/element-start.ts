/** The script of `<tag-strip>`. A second one on the same page, of whatever release, leaves the first alone. */
const address = (document.currentScript as HTMLScriptElement | null)?.src;
if (customElements.get('tag-strip') === undefined) void import('./element.js').then(({ define }) => { define(address); });
