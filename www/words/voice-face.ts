import type { Face } from './face.js';
import { said } from './plain.js';

/** What `voice` shows where. */
export const VOICE_FACE: Face = {
  switch: 'positions',
  listen: true,
  lug: { answer: 'lift_db', each: true },
  tables: [
    {
      heading: 'At each position',
      note: 'at the load',
      columns: 'positions',
      rows: [
        { answer: 'gain_db_1k' },
        { answer: 'lift_db', againstFirst: true },
        {
          answer: 'output_volts',
          label: ({ inputs, way }) => {
            const given = said(inputs, 'microphone_volts', 'V', way);
            return given === '' ? 'Output at 1 kHz' : `Out, from ${given}`;
          },
        },
      ],
    },
    {
      heading: 'Speech at each position',
      note: 'average voice, equal power for intelligibility',
      columns: 'positions',
      rows: [
        { answer: 'intelligibility' },
        { answer: 'loudness_change_db', againstFirst: true },
        { answer: 'level_change_db', againstFirst: true },
      ],
    },
    {
      heading: 'Hum and hiss at each position',
      note: 'against the output at 1 kHz',
      columns: 'positions',
      rows: [{ answer: 'hum_db' }, { answer: 'hiss_db' }, { answer: 'hum_volts' }, { answer: 'hiss_volts' }],
    },
    {
      heading: 'Against the hum',
      rows: [{ answer: 'hum_cure_farads' }, { answer: 'hum_cure_ohms' }, { answer: 'hum_cure_db' }],
    },
    {
      heading: 'The stage, any position',
      rows: [
        { answer: 'plate_volts' },
        { answer: 'cathode_volts' },
        { answer: 'plate_amps' },
        { answer: 'headroom_db' },
        { answer: 'bias_volts' },
        { answer: 'plate_watts' },
        { answer: 'gm' },
        { answer: 'plate_resistance' },
        { answer: 'mu' },
      ],
    },
    {
      heading: 'The microphone',
      note: 'before anything is connected',
      rows: [
        { answer: 'microphone_expected_volts' },
        { answer: 'microphone_speech_db' },
        { answer: 'microphone_low_hertz' },
        { answer: 'carbon_amps' },
        { answer: 'carbon_watts' },
      ],
    },
    {
      heading: 'Which capacitor?',
      note: 'three that are sold, and what each does',
      rows: [
        { answer: 'lift_farads' },
        { answer: 'intelligibility_farads' },
        { answer: 'sold_farads' },
        { answer: 'sold_lift_db' },
        { answer: 'sold_intelligibility' },
        { answer: 'sold_output_volts' },
      ],
    },
  ],
  tags: [
    { node: 'plate', answer: 'plate_volts' },
    { node: 'cathode', answer: 'cathode_volts' },
    { node: 'output', answer: 'output_volts', each: true },
  ],
  pictures: [
    {
      curve: 'response',
      lines: 'positions',
      bands: [
        [300, 500],
        [2200, 2800],
      ],
      cursor: 2500,
      span: [100, 10e3],
    },
    { curve: 'speech', lines: 'positions', cursor: 2500 },
  ],
  near: {
    tube: 'plate_volts',
    supply_volts: 'plate_volts',
    plate_ohms: 'plate_volts',
    cathode_ohms: 'cathode_volts',
    cathode_farads: 'gain_db_1k',
    grid_ohms: 'gain_db_1k',
    grid_volts: 'bias_volts',
    decoupling_ohms: 'plate_volts',
    decoupling_farads: 'gain_db_1k',
    microphone_volts: 'headroom_db',
    microphone_ohms: 'gain_db_1k',
    microphone_farads: 'microphone_low_hertz',
    microphone_sensitivity: 'microphone_expected_volts',
    microphone_distance: 'microphone_expected_volts',
    microphone_ratio: 'microphone_expected_volts',
    carbon_volts: 'carbon_amps',
    carbon_ohms: 'carbon_amps',
    carbon_feed_ohms: 'carbon_amps',
    'positions[].farads': 'gain_db_1k',
    noise: 'intelligibility',
    receiver_hertz: 'intelligibility',
    level: 'output_volts',
    level_ohms: 'output_volts',
    ripple_volts: 'hum_db',
    ripple_hertz: 'hum_db',
  },
  beside: {
    bass: ['bass_ohms'],
    treble: ['treble_ohms'],
    level: ['level_ohms'],
    'positions[].farads': ['positions[].label'],
  },
};
