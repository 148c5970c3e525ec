import { nodeWords } from './node-words.js';
import { spelled } from './plain.js';
import { told, USUAL_WAY, type Way } from './way.js';

const START = 'These values fit one by one and have no answer together:';

/** Why inputs in range have no solution, by the code after which a colon and a node may follow. */
const REASONS: Readonly<Record<string, (where: string) => string>> = {
  not_converged: (where) =>
    `${START} the volts ${where === '' ? 'did not settle' : `at the ${where} did not settle`}. Bring the last change nearer to usual values.`,
  solve_not_there: () => `${START} the part to work out is not in a branch. Name one that is, such as branches[0].farads.`,
  corner_out_of_reach: () => `${START} no value of that part puts the corner there. Choose another part or another corner.`,
  no_corner: () => `${START} the ladder has no corner that this part could move.`,
  empty_branch: (where) => `${START} a branch${where === '' ? '' : ` (${where})`} has no part in it. Give it one, or take it out.`,
  nothing_passes: () => `${START} nothing reaches the load.`,
  too_few_points: () => `${START} a tube needs two points at least. Add one more from the data sheet.`,
  points_disagree: () => `${START} no tube passes near all of these points. Look at the minus before the grid volts.`,
  not_read: () => `${START} the marking has no reading.`,
};

/** The reasons that have a sentence. */
export const REASON_CODES: readonly string[] = Object.keys(REASONS);

/** Why there is no solution, and what to do. */
export function reasonWords(about: string, way: Way = USUAL_WAY): string {
  const [code = '', where = ''] = about.split(':');
  const reason = Object.hasOwn(REASONS, code) ? REASONS[code] : undefined;
  if (reason !== undefined) return told(reason(where === '' ? '' : nodeWords(where)), way);
  return code === '' ? `${START.slice(0, -1)}.` : `${START} ${spelled(about.replace(':', ', '))}.`;
}
