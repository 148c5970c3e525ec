/** Tells the page how much of its foot a phone's keyboard covers, as `--under`. Returns what stops it. */
export function watchKeyboard(page: HTMLElement): () => void {
  const view = globalThis.visualViewport;
  if (view === null || view === undefined) return () => undefined;
  const measure = (): void => {
    // Pinched in, the viewport is small for another reason.
    const covered = view.scale > 1.05 ? 0 : Math.max(0, innerHeight - view.height - view.offsetTop);
    page.style.setProperty('--under', `${Math.round(covered)}px`);
  };
  view.addEventListener('resize', measure);
  view.addEventListener('scroll', measure);
  return () => {
    view.removeEventListener('resize', measure);
    view.removeEventListener('scroll', measure);
  };
}
