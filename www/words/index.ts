/** Every text for people, once, made from the engine's codes and figures. */

export { bandsWords } from './bands.js';
export type { CautionWords, Gauge } from './caution-kinds.js';
export { byGravity, CAUTION_CODES, cautionLine, cautionText, cautionWords, SEVERITIES } from './cautions.js';
export { standing, verdictWords, type Standing } from './verdict.js';
export { DANGER_LAW, DANGER_PROOF, dangerLine, dangerSteps, waited, waitOf, type DangerStep, type Hazard } from './danger.js';
export {
  curveWords, dressCatalogue, dressCautions, dressCurves, dressProblems, lineWords, type Answer, type Dressed, type Row,
} from './dress.js';
export { partEcho, partEchoShort } from './echo.js';
export type { Face, FaceHand, FacePicture, FaceRow, FaceTable, FaceTag } from './face.js';
export { answerFigure, answerUnit, answerWords, choiceWords, inputWords, labelOf, phraseOf } from './fields.js';
export { drawingNote, readingsNote, refusedCount, SAY, staleWords, STATES } from './interface.js';
export type {
  BareCaution, BareOutcome, BareProblem, CalculatorWords, Circuit, CircuitPart, CurveWords, FieldWords, Figures, HowWorked,
  Lead, Mend, PartRow, Severity, Situation, Value,
} from './kinds.js';
export { wordsOf } from './known.js';
export { lengthWords } from './lengths.js';
export { BASE_CODES, baseWords, ELECTRODE_CODES, electrodeWords, joinWords, nodeHeading, nodeWords, pointWords, NODE_CODES, terminalWords } from './node-words.js';
export { NULL_CODES, nullWords } from './nulls.js';
export {
  KIND_CODES, kindWords, partHeading, ratingWords, ROLE_CODES, roleWords, RULE_CODES, ruleWords, wattsWords,
} from './part-words.js';
export { counted, list, lowered, raised } from './plain.js';
export { PROBLEM_CODES, problemText, type ProblemContext } from './problems.js';
export { NO_BREAK, show, show_quantity, split, type Shown, type Split } from './quantity.js';
export { readAs, readingWords, type BareReading } from './readings.js';
export { REASON_CODES, reasonWords } from './reasons.js';
export { allRows, rowAt, type BareAnswer, type BareCalculator, type BareRow } from './rows.js';
export { spoken, unitName } from './spoken.js';
export { mendButton, mendsText, READER_CODES, unreadText } from './unread.js';
export { positionName } from './voice-lead.js';
export { told, USUAL_WAY, type Way } from './way.js';
export { typedText, writtenLike } from './written.js';
