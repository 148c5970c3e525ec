import '../../../www/drawings/ts-drawing.js';
import '../../../www/plots/ts-plot.js';

import { draw } from '../../../www/drawings/draw.js';
import { held } from '../../../www/drawings/held.js';
import { CURVES } from './curves.js';
import { filterNetlist, stageNetlist, voiceNetlist } from './netlists.js';

const TEXTS = new Map(Object.entries({
  supply_volts: '263 V', plate_ohms: '220k', cathode_ohms: '2k2', cathode_farads: '25 MFD', grid_ohms: '1M', tube: '6SL7GT',
  microphone_volts: '30 mV', microphone_ohms: '50k', microphone_farads: '1500p', 'positions[0].farads': '.02',
  'positions[1].farads': '470 mmf', 'positions[2].farads': '.001', 'positions[3].farads': '.0047', 'positions[4].farads': '.01',
  'positions[5].farads': '.05 MFD', 'tone_parts.r_in': '100k', 'tone_parts.r_low': '10k', 'tone_parts.r_mix': '100k',
  'tone_parts.c_bass_top': '.0022', 'tone_parts.c_bass_bottom': '.022', 'tone_parts.c_treble_top': '220p',
  'tone_parts.c_treble_bottom': '.0022', bass: '20 %', treble: '45 %', bass_ohms: '1M', treble_ohms: '1M', level: '60 %',
  level_ohms: '500k', load_ohms: '1M', load_farads: '100p', decoupling_ohms: '22k', decoupling_farads: '8 MFD', grid_volts: '−3 V',
  source_ohms: '50k', coupling_farads: '.02',
}));
/** Typed points of a sheet, for the face of `tube`. */
const SHEET = new Map(Object.entries({
  name: 'my 6N7', 'points[0].plate_volts': '90 V', 'points[0].grid_volts': '0', 'points[0].plate_amps': '10 mA',
  'points[1].plate_volts': '250 V', 'points[1].grid_volts': '−8 V', 'points[1].plate_amps': '9 mA',
  'cutoff[0].plate_volts': '250', 'cutoff[0].grid_volts': '-18',
}));
const TAGS = new Map([
  ['plate', { text: '135 V' }], ['cathode', { text: '1.28 V' }], ['output', { text: '31 mV' }], ['decoupled', { text: '250 V' }],
]);

/** Everything a test may want of the page. */
const gallery = { CURVES, draw, held, voiceNetlist, stageNetlist, filterNetlist, SHEET, TEXTS, TAGS };

declare global {
  interface Window {
    gallery: typeof gallery;
  }
}
window.gallery = gallery;
