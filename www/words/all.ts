/** The words of every calculator at once, for whoever cannot wait: the package, and the maker of the static pages. */
import { CALCULATORS } from './calculators.js';
import { learn } from './known.js';

learn(CALCULATORS);
