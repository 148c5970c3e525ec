/** When the next picture has been shown; a page that is not seen shows none, so not for long. */
export function afterFrame(): Promise<void> {
  return new Promise((then) => {
    const late = setTimeout(then, 100);
    requestAnimationFrame(() => {
      clearTimeout(late);
      setTimeout(then);
    });
  });
}
