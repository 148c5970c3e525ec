import type { Face } from './face.js';

const NODES = [1, 2, 3, 4, 5, 6] as const;
const ripple = (figure: string): string => `${figure} p-p`;

/** What `supply` shows where. */
export const SUPPLY_FACE: Face = {
  lug: { answer: 'output_volts' },
  tables: [
    {
      heading: 'Answers',
      rows: [
        { answer: 'output_volts' },
        { answer: 'output_ripple_pp' },
        { answer: 'output_no_load_volts' },
        { answer: 'peak_rectifier_amps' },
        { answer: 'winding_rms_amps' },
        { answer: 'discharge_seconds' },
        { answer: 'discharge_50_seconds' },
      ],
    },
    {
      heading: 'At each node',
      note: 'from the rectifier on',
      rows: [
        { answer: 'node_volts' },
        { answer: 'node_ripple_pp' },
        { answer: 'node_ripple_rms' },
        { answer: 'no_load_volts' },
        { answer: 'capacitor_ripple_amps' },
        { answer: 'section_watts' },
      ],
    },
    {
      heading: 'Rectifier and winding',
      rows: [
        { answer: 'turn_on_peak_amps' },
        { answer: 'rectifier_dc_amps' },
        { answer: 'peak_inverse_volts' },
        { answer: 'critical_henries' },
        { answer: 'regulation_percent' },
        { answer: 'input_watts' },
        { answer: 'winding_watts' },
        { answer: 'rectifier_watts' },
      ],
    },
    {
      heading: 'Gas regulator',
      rows: [{ answer: 'regulator_strikes' }, { answer: 'regulator_amps_least' }, { answer: 'regulator_amps_most' }],
    },
    { heading: 'Silicon instead', rows: [{ answer: 'silicon_series_ohms' }, { answer: 'silicon_no_load_volts' }] },
  ],
  tags: NODES.map((number) => ({ node: `b${number}`, answer: `node_volts[${number - 1}]`, second: { answer: `node_ripple_pp[${number - 1}]`, words: ripple } })),
  pictures: [
    { curve: 'start', live: 'last' },
    { curve: 'regulation', live: 'last', limit: 'rated' },
    { curve: 'ripple', live: 'last' },
    { curve: 'charging' },
  ],
  near: {
    secondary_volts: 'output_volts',
    winding_ohms: 'peak_rectifier_amps',
    rectifier: 'output_volts',
    'sections[].farads': 'output_ripple_pp',
    'sections[].henries': 'output_ripple_pp',
    'sections[].ohms': 'output_volts',
    'loads[].amps': 'output_volts',
    'loads[].ohms': 'output_volts',
    bleeder_ohms: 'discharge_seconds',
    regulator: 'regulator_amps_least',
  },
  beside: {
    secondary_volts: ['winding_ohms', 'mains_hertz', 'mains_percent'],
    'sections[].henries': ['sections[].ohms'],
    'sections[].farads': ['sections[].volts'],
    rectifier: ['rectifier_circuit'],
  },
};
