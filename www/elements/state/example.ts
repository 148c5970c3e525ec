import type { Build } from './kinds.js';

/** The club's winter build: invented, and so are its figures. */
export const EXAMPLE: Build = {
  name: 'Marram Point winter build',
  lugs: [
    {
      id: 'speech',
      calculator: 'voice',
      inputs: {
        supply_volts: '263 V',
        plate_ohms: '220k',
        cathode_ohms: '2k2',
        cathode_farads: '25 MFD',
        grid_ohms: '1M',
        microphone_volts: '30 mV',
        positions: [
          { label: 'Round', farads: '.02' },
          { label: 'Clear', farads: '470 mmf' },
        ],
        tone_parts: {
          r_in: '100k', r_low: '10k', r_mix: '100k',
          c_bass_top: '.0022', c_bass_bottom: '.022', c_treble_top: '220p', c_treble_bottom: '.0022',
        },
        level_ohms: '500k',
      },
      position: 1,
      pins: [],
      rest: { fitted: true },
    },
  ],
  rest: { revision: 3, notes: 'An invented club and an invented build.' },
};
