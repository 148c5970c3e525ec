import type { Face } from './face.js';
import type { FieldWords } from './kinds.js';

/** What each answer of `coil` is. */
export const COIL_ANSWERS: Readonly<Record<string, FieldWords>> = {
  henries: { label: 'Inductance', phrase: 'the inductance', help: 'Of the coil as wound, at the frequency, without its capacitance.' },
  turns: { label: 'Turns', phrase: 'the turns', help: 'As given, or the whole turns nearest to what you want.' },
  pitch: { label: 'Pitch', phrase: 'the pitch', help: 'From the middle of one turn to that of the next.' },
  winding_length: { label: 'Winding length', phrase: 'the winding length', help: 'Turns times pitch.' },
  wire_length: { label: 'Wire in the winding', phrase: 'the wire in the winding', help: 'Along the helix, without the leads.' },
  wire_to_cut: { label: 'Wire to cut', phrase: 'the wire to cut', help: 'With both leads. Taps that are twisted loops take more.' },
  mean_diameter: { label: 'Mean diameter', phrase: 'the mean diameter', help: 'From the middle of the wire across to the middle of the wire.' },
  exact_turns: { label: 'Exact turns', phrase: 'the exact turns', help: 'What would give the inductance wanted to the last digit.' },
  rounding_percent: { label: 'Rounding does', phrase: 'what rounding does', help: 'How far whole turns are from the inductance wanted.', signed: true },
  fix_turns: { label: 'Turns to spread', phrase: 'the turns to spread', help: 'So many turns give the wish when spread to the pitch below.' },
  fix_pitch: { label: 'At a pitch of', phrase: 'the pitch that meets it', help: 'The pitch at which those turns give the inductance wanted.' },
  dc_ohms: { label: 'Resistance at dc', phrase: 'the dc resistance', help: 'What an ohmmeter would read, leads left out.' },
  rf_ohms: { label: 'Resistance at RF', phrase: 'the RF resistance', help: 'With the skin effect and the neighbouring turns.' },
  q: { label: 'Q', phrase: 'Q', help: 'Reactance over resistance of the coil alone.' },
  q_percent: { label: 'Q, give or take', phrase: 'the doubt in Q', help: 'A judgement: loss of real coils scatters, mostly downwards.' },
  self_farads: { label: 'Self-capacitance', phrase: 'the self-capacitance', help: 'With one end grounded, after Medhurst.' },
  self_farads_percent: { label: 'That, give or take', phrase: 'the doubt in the self-capacitance', help: 'Medhurst states 5 % for many turns; few turns and flat coils are further off.' },
  self_resonant_hertz: { label: 'Resonates by itself at', phrase: 'its own resonance', help: 'With its self-capacitance alone.' },
  effective_henries: { label: 'Acts as', phrase: 'the effective inductance', help: 'Inductance between the ends with the self-capacitance across them.' },
  volts: { label: 'Volts across', phrase: 'the volts across it', help: 'RF volts between the ends, rms, at the current given.' },
  watts: { label: 'Heat', phrase: 'the heat', help: 'What the current loses in the coil.' },
  rise_celsius: { label: 'Warmer than air by', phrase: 'the rise in temperature', help: 'An estimate for still air.' },
  tap_henries: { label: 'Up to the tap', phrase: 'the inductance up to each tap', help: 'From the cold end, with the rest open or shorted as chosen.' },
  tap_coupling: { label: 'Coupling to the rest', phrase: 'the coupling of each tap', help: 'Between the turns below and above the tap; 1 is complete.' },
  band_turns: { label: 'Tap for each band', phrase: 'the tap for each band', help: 'Turns from the cold end at which the band’s capacitor resonates.' },
  link_coupling: { label: 'Link coupling', phrase: 'the coupling of the link', help: 'Between the link and the whole coil; 1 is complete.' },
  link_henries: { label: 'Link inductance', phrase: 'the inductance of the link', help: 'Of the link by itself.' },
  correction: { label: 'Measured over computed', phrase: 'the correction', help: 'Inductance as measured over that as computed at the dip.' },
  stray_farads: { label: 'Stray found', phrase: 'the stray', help: 'Capacitance across the coil beside the known capacitors, its own included.' },
  corrected_turns: { label: 'Turns it should have', phrase: 'the corrected turns', help: 'So that the coil as measured comes to what was meant.' },
  core_turns: { label: 'Turns on the core', phrase: 'the turns on the core', help: 'For the same inductance on the core given; cores are 5 to 25 % off.' },
  template: { label: 'Winding template', phrase: 'the template', help: 'Places of holes, taps and ends on paper wrapped once around the form, in metres.' },
};

/** What the page of `coil` shows where. */
export const COIL_FACE: Face = {
  lug: { answer: 'henries' },
  tables: [
    {
      heading: 'Answers',
      rows: [
        { answer: 'henries' }, { answer: 'turns' }, { answer: 'exact_turns' }, { answer: 'rounding_percent' },
        { answer: 'q' }, { answer: 'rf_ohms' }, { answer: 'self_farads' }, { answer: 'self_resonant_hertz' }, { answer: 'effective_henries' },
        { answer: 'volts' }, { answer: 'watts' }, { answer: 'rise_celsius' },
      ],
    },
    { heading: 'Taps', columns: 'taps', rows: [{ answer: 'tap_henries' }, { answer: 'tap_coupling' }] },
    { heading: 'Bands', columns: 'bands', rows: [{ answer: 'band_turns' }] },
    { heading: 'Link', rows: [{ answer: 'link_henries' }, { answer: 'link_coupling' }] },
    { heading: 'As measured', rows: [{ answer: 'correction' }, { answer: 'stray_farads' }, { answer: 'corrected_turns' }] },
    {
      heading: 'To wind',
      rows: [
        { answer: 'winding_length' }, { answer: 'pitch' }, { answer: 'fix_turns' }, { answer: 'fix_pitch' }, { answer: 'wire_length' },
        { answer: 'wire_to_cut' }, { answer: 'mean_diameter' }, { answer: 'dc_ohms' }, { answer: 'core_turns' },
      ],
    },
  ],
  tags: [],
  pictures: [{ curve: 'coil_q' }, { curve: 'coil_inductance' }],
  near: { form_diameter: 'henries', turns: 'henries', hertz: 'q', 'wire.awg': 'q' },
  beside: {},
};
