// The three engines that a reader's browser may have inside, behind one small interface:
// `start()` gives `visit({width, height})`, a new profile with one page: `go`, `reload`, `run(source, arguments)` in the page, `press`
// keys one by one, `chord` with a modifier, `tap` a place, `size`, `offline` where the engine can, `shot`; `told` is what
// its console was told that is wrong, where the engine lets us hear it.
import * as chromium from './chromium.mjs';
import * as firefox from './firefox.mjs';
import * as webkit from './webkit.mjs';

export const ENGINES = { chromium, firefox, webkit };
