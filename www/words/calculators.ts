import { COIL } from './coil.js';
import { FILTER } from './filter.js';
import { HEATER } from './heater.js';
import type { CalculatorWords } from './kinds.js';
import { LOWPASS } from './lowpass.js';
import { MARKING } from './marking.js';
import { RAIL } from './rail.js';
import { STAGE } from './stage.js';
import { SUPPLY } from './supply.js';
import { TANK } from './tank.js';
import { TRANSFORMER } from './transformer.js';
import { TUBE } from './tube.js';
import { TUNING } from './tuning.js';
import { VOICE } from './voice.js';

/** The words of every calculator, in the order of the shelf. */
export const CALCULATORS: readonly CalculatorWords[] = [
  VOICE, STAGE, SUPPLY, TRANSFORMER, RAIL, HEATER, FILTER, COIL, TUNING, TANK, LOWPASS, TUBE, MARKING,
];
