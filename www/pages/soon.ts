interface Page {
  tagstripSoon?: Map<string, Promise<Response>>;
}

/** What was asked for before it is wanted, by its address: the two scripts of a page share this and nothing else. */
const page = globalThis as Page;

/** Asks for files ahead, unless the page's own script was first and has asked already. */
export function ask(addresses: readonly string[]): void {
  if (page.tagstripSoon !== undefined) return;
  page.tagstripSoon = new Map(addresses.map((address) => {
    const coming = fetch(address);
    coming.catch(() => undefined);
    return [address, coming];
  }));
}

/** A file: what is on its way, which can be had once, or else asked for now. */
export function take(address: string): Promise<Response> {
  const asked = (page.tagstripSoon ??= new Map());
  const coming = asked.get(address);
  asked.delete(address);
  return coming ?? fetch(address);
}
