import type { Lead, Situation, Value } from './kinds.js';
import { at, figure } from './plain.js';
import { show, split } from './quantity.js';

/** The lead of `supply`: volts at the last node, their ripple, and what stands there while the tubes are cold. */
export function supplyLead({ outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const last = count(at(answers, 'node_volts')) - 1;
  const volts = figure(answers, 'output_volts');
  const ripple = figure(answers, 'output_ripple_pp');
  const cold = figure(answers, `no_load_volts[${last}]`);
  const drawn = figure(answers, 'rectifier_dc_amps');
  const label = `B+ at the last node, ${show(drawn, 'A', { prefix: 'm', way })} in all`;
  const part = volts !== null && ripple !== null && ripple > 0 && volts > ripple ? `, one part in ${ratio(volts / ripple)}` : '';
  const rises = cold !== null && volts !== null && cold > 1.01 * volts;
  const after = rises ? ` With the tubes still cold it stands at ${show(cold, 'V', { way })}.` : '';
  const shown = split(volts, 'V', { way });
  return { label, figure: shown.figure, unit: shown.unit, sentence: `Ripple is ${show(ripple, 'V', { digits: 2, way })} peak to peak${part}.${after}` };
}

function count(list: Value | undefined): number {
  return Array.isArray(list) ? list.length : 1;
}

/** Two figures are enough for "one part in 3,700". */
function ratio(times: number): string {
  const digits = 10 ** Math.max(0, Math.floor(Math.log10(times)) - 1);
  return (Math.round(times / digits) * digits).toLocaleString('en-US');
}
