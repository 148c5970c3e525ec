// Every row of `tank` among the cases worked outside the project.
import { computed } from '../measuring/computed.mjs';

export const measure = () => computed('tank');
