/**
 * When the next picture has been shown and nothing more pressing is left to do, at the latest after `late` milliseconds:
 * a page that is not seen shows no pictures, and a busy one has no quiet.
 */
export function afterFrame(late = 60): Promise<void> {
  return new Promise((then) => {
    const timer = setTimeout(then, late + FRAME);
    const done = (): void => {
      clearTimeout(timer);
      then();
    };
    requestAnimationFrame(() => {
      if (typeof requestIdleCallback === 'function') requestIdleCallback(done, { timeout: late });
      else setTimeout(done);
    });
  });
}

const FRAME = 40;
