// Every row of `lowpass` among the cases worked outside the project.
import { computed } from '../measuring/computed.mjs';

export const measure = () => computed('lowpass');
