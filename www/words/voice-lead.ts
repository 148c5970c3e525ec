import type { Figures, Lead, Situation } from './kinds.js';
import { figure, said, text } from './plain.js';
import { show, split } from './quantity.js';

/** Under this many dB two positions are called alike. */
const ALIKE_DB = 0.5;

/** A position's own name, or its number. */
export function positionName(inputs: Figures, index: number): string {
  const name = text(inputs, `positions[${index}].label`).trim();
  return name === '' ? `position ${index + 1}` : name;
}

/**
 * The lead of `voice`: the lift of the position switched in against the first; at the first itself, the gain.
 */
export function voiceLead({ inputs, outcome, position, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const name = positionName(inputs, position);
  const gain = figure(answers, `gain_db_1k[${position}]`);
  if (gain === null) {
    const label = `${name}, at 1 kHz`;
    return { label, ...split(null, 'dB'), sentence: 'Level is at 0: nothing passes. Turn it up.' };
  }
  const lift = figure(answers, `lift_db[${position}]`);
  if (position === 0 || lift === null) {
    const label = `${name}, at 1 kHz`;
    return { label, ...split(gain, 'dB', { signed: true, way }), sentence: outward(answers, inputs, position, way) };
  }
  const label = `${name} against ${positionName(inputs, 0)}, ${show(2.2, '1', { way })} to ${show(2800, 'Hz', { way })}`;
  const change = gain - (figure(answers, 'gain_db_1k[0]') ?? gain);
  return { label, ...split(lift, 'dB', { signed: true, way }), sentence: `${heard(lift)} ${loudness(change, way)}` };
}

function outward(answers: Figures, inputs: Figures, position: number, way: Situation['way']): string {
  const out = show(figure(answers, `output_volts[${position}]`), 'V', { digits: 2, way });
  const given = said(inputs, 'microphone_volts', 'V', way);
  const from = given === '' ? '' : ` from ${given} at the microphone`;
  const headroom = figure(answers, 'headroom_db');
  if (headroom === null) return `${out} at the load${from}.`;
  if (headroom < 0) return `${out} at the load${from}: that is past clipping by ${show(-headroom, 'dB', { way })}.`;
  return `${out} at the load${from}, with ${show(headroom, 'dB', { digits: 2, way })} to spare before it clips.`;
}

function heard(lift: number): string {
  if (lift > ALIKE_DB) return 'Consonants stand out that much more from the body of the voice, which may help in noise.';
  if (lift < -ALIKE_DB) return 'Consonants sink that much into the body of the voice.';
  return 'Consonants and the body of the voice keep their balance.';
}

function loudness(change: number, way: Situation['way']): string {
  const size = show(Math.abs(change), 'dB', { way });
  if (change < -ALIKE_DB) return `At 1 kHz it is ${size} quieter: turn Level up.`;
  if (change > ALIKE_DB) return `At 1 kHz it is ${size} louder: turn Level down.`;
  return 'It is as loud at 1 kHz.';
}

/**
 * What is common practice about one tenth of the capacitor, with the person's own figures: one sentence, or none where
 * there is nothing to compare.
 */
export function voiceRemarks({ inputs, outcome, position, way }: Situation): readonly string[] {
  const answers = outcome.answers ?? {};
  const index = position > 0 ? position : 1;
  const lift = figure(answers, `lift_db[${index}]`);
  const ahead = figure(answers, `source_ohms_seen[${index}]`);
  const into = figure(answers, `load_ohms_seen[${index}]`);
  const [first, small] = [0, index].map((each) => fitted(inputs, outcome, `positions[${each}].farads`));
  if (lift === null || ahead === null || into === null || !first || !small) return [];
  const share = show(first / small, '1', { digits: 2, way });
  const corner = 1 / (2 * Math.PI * (ahead + into) * small);
  return [
    `One tenth of the capacitor is usual for a voice that may carry better through noise; into a plain load with its corner near ${show(1000, 'Hz', { way })} ` +
      `it gives about 8 dB more at 2.2–2.8 kHz against the low notes, and less on the meter, but it depends on the load: yours, ` +
      `1 to ${share}, with ${show(small, 'F', { way })} between ${show(ahead, 'Ω', { digits: 2, way })} and ${show(into, 'Ω', { digits: 2, way })}, ` +
      `has its corner at ${show(corner, 'Hz', { digits: 2, way })} and gives ${show(lift, 'dB', { signed: true, way })}.`,
  ];
}

/** A part's value from the circuit, or from the inputs where those are figures. */
function fitted(inputs: Figures, outcome: Situation['outcome'], field: string): number | null {
  const part = outcome.circuit?.parts.find((each) => each.field === field);
  if (typeof part?.value === 'number') return part.value;
  return field === 'level' ? null : figure(inputs, field);
}
