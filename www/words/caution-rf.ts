import type { CautionMaker } from './caution-kinds.js';
import { at, list } from './plain.js';
import { show } from './quantity.js';

/** What can hurt or fail where the carrier flows. */
export const RF_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  rf_burn: ({ f, figures }) => ({
    hazard: 'radio',
    heading: `${f('modulated_volts', 'V')} of radio frequency`,
    text:
      `${f('volts', 'V')} peak at the carrier${figures['modulated_volts'] === figures['volts'] ? '' : `, ${f('modulated_volts', 'V')} at the crests of full modulation`}. ` +
      'It burns skin to the depth at a touch, and a gap that is too small arcs. Key off and plate volts down before a hand goes near; ' +
      'tune with insulated shafts behind a grounded panel.',
  }),
  tank_plate_volts: ({ f, figures }) => ({
    hazard: 'radio',
    heading: `${f('volts', 'V')} of plate supply beside the tank`,
    text:
      `Only the blocking capacitor keeps it off the coil and the antenna: ${f('blocking_farads', 'F')} or more, for ` +
      `${figures['crest_volts'] === figures['volts'] ? 'half as much again as that' : `half as much again as ${f('crest_volts', 'V')}, to which modulation raises it`}. ` +
      'Put a choke from the antenna’s side to ground, so that a capacitor which breaks down blows the fuse instead of putting the supply on the antenna. ' +
      'Unplug, wait, meter and discharge before you touch the coil.',
  }),
  swing_over_plate: ({ f }) => ({
    heading: 'the plate cannot swing that far',
    text: `This power in this load takes ${f('volts', 'V')} peak, and the plate has ${f('plate_volts', 'V')} to swing from. A smaller load or less power fits.`,
    gauge: ['volts', 'plate_volts', 'V'],
  }),
  tank_q_low: ({ f }) => ({
    heading: `a Q of ${f('q', '1')} is low`,
    text: 'The tank hardly holds its swing between the tube’s pulses, and harmonics get through. Ten to fifteen is usual.',
  }),
  tank_q_high: ({ f }) => ({
    heading: `a Q of ${f('q', '1')} is high`,
    text: 'More current goes round in the tank and heats the coil, and it must be tuned again for small steps of frequency. Ten to fifteen is usual.',
  }),
  tank_hot: ({ f }) => ({
    heading: `the coils keep ${f('watts', 'W')}`,
    text: `That is ${f('percent', '%')} of the power, as heat. Thicker wire, a larger form or a lower Q keeps less.`,
  }),
  tank_input_small: ({ f }) => ({
    heading: 'the input capacitor is very small',
    text: `${f('farads', 'F')} is less than a variable capacitor has with its plates out, about ${f('least_farads', 'F')}. A higher Q or a smaller load needs more.`,
  }),
  carrier_over_cutoff: ({ f }) => ({
    heading: 'the carrier is over the cut-off',
    text: `${f('carrier_hertz', 'Hz', 4)} does not pass a filter that ends at ${f('cutoff_hertz', 'Hz', 4)}. Cut off a tenth over the top of the band.`,
  }),
  poor_match: ({ f }) => ({
    heading: 'the filter reflects at the carrier',
    text: `A return loss of ${f('return_loss_db', 'dB')} changes the load that the transmitter was tuned for. Move the cut-off, or choose less ripple.`,
  }),
  harmonic_short: ({ f }) => ({
    heading: `the 2nd harmonic needs ${f('short_db', 'dB')} more`,
    text:
      `This takes off ${f('db', 'dB')}; ${f('wanted_db', 'dB')} under the carrier is asked for under 30 MHz (47 CFR 97.307(d)), and the rules of your country decide. ` +
      'What the tube makes and what other networks take off add to it.',
  }),
  harmonic_tunable: ({ figures, f, way }) => {
    const found = at(figures, 'hertz');
    const hertz = (Array.isArray(found) ? found : []).filter((each): each is number => typeof each === 'number');
    const told = list(hertz.slice(0, 5).map((each) => show(each, 'Hz', { digits: 4, way })));
    return {
      hazard: 'none',
      heading: `this tank also tunes to ${told}`,
      text:
        `Each is in the crystal’s row, and the plate current dips there as it does at ${f('target_hertz', 'Hz', 4)}. On the wrong one you transmit where you may have no licence. ` +
        'Find the dip with a wavemeter or a receiver the first time, then mark the dial.',
    };
  },
  target_no_harmonic: ({ f }) => ({
    heading: 'the crystal does not make that frequency',
    text: `${f('target_hertz', 'Hz', 4)} is no whole multiple of ${f('crystal_hertz', 'Hz', 4)}.`,
  }),
  target_outside: ({ f }) => ({
    heading: `${f('target_hertz', 'Hz', 4)} is out of reach`,
    text: `The tank goes from ${f('hertz_low', 'Hz', 4)} to ${f('hertz_high', 'Hz', 4)}.`,
  }),
};
