import type { CautionMaker } from './caution-kinds.js';
import { figure, list, text, texts } from './plain.js';

const tube = (figures: Parameters<CautionMaker>[0]['figures']): string => text(figures, 'tube') || 'the tube';

const part = (figures: Parameters<CautionMaker>[0]['figures']): string => text(figures, 'part') || 'a capacitor';

/** What a supply can do to a person, to its parts and to what it feeds. */
export const SUPPLY_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  danger_supply: ({ figures, f }) => {
    const bleeder = text(figures, 'bleeder');
    const own = figure(figures, 'own_seconds');
    const falls = own === null
      ? 'Nothing drawn here empties the capacitors: they stay charged for days.'
      : `${bleeder === '' ? 'The parts drawn' : `The bleeder ${bleeder}`} brings every node under ${f('touchable', 'V')} in ${f('own_seconds', 's', 2)} ` +
        `and under ${f('guarded', 'V')} in ${f('guarded_seconds', 's', 2)}. If it is open, nothing falls: so meter, always.`;
    const between = texts(figures, 'between');
    const apart = between.length === 0
      ? ''
      : ` ${list(between)} ${between.length === 1 ? 'stands' : 'stand'} between capacitors: if it opens, one side stays full while the other reads nothing. ` +
        'One low reading proves only its own capacitor.';
    return { heading: `${f('volts', 'V')} after the plug is out`, text: `${falls}${apart}` };
  },
  no_bleeder: ({ f }) => ({
    heading: 'no bleeder',
    text: `With the tubes out or cold the capacitors keep ${f('volts', 'V')} for days. Fit a resistor across the last one; a tenth of the load’s current is usual.`,
  }),
  collapsed: ({ f }) => ({
    heading: 'more drawn than can come',
    text: `The supply cannot bring ${f('amps', 'A')} to this node: its volts fall to nothing. Draw less, or put less resistance before it.`,
  }),
  inverse_over: ({ figures, f }) => ({
    heading: `${tube(figures)} inverse volts`,
    text: `With the mains high, ${f('value', 'V')} stand across one plate while it does not conduct; the tube is rated ${f('rating', 'V')}. Use a winding of fewer volts, or a rectifier rated for more.`,
    gauge: ['value', 'rating', 'V'],
  }),
  peak_over: ({ figures, f }) => {
    const mend = figure(figures, 'series_ohms') === null
      ? 'A smaller first capacitor or more resistance in each plate lead brings it down.'
      : `${f('series_ohms', 'Ω', 2)} in each plate lead bring it to ${f('amps_then', 'A')} and the last node to ${f('volts_then', 'V')}.`;
    return {
      heading: `${tube(figures)} peak current`,
      text: `${f('value', 'A')} at each plate; the tube is rated ${f('rating', 'A')}. ${mend}`,
      gauge: ['value', 'rating', 'A'],
    };
  },
  rectifier_amps_over: ({ figures, f }) => ({
    heading: `${tube(figures)} direct current`,
    text: `${f('value', 'A')} are drawn; the tube is rated ${f('rating', 'A')} this way. Draw less, or use a larger rectifier.`,
    gauge: ['value', 'rating', 'A'],
  }),
  plate_rms_over: ({ figures, f }) => ({
    heading: `${tube(figures)} plate volts`,
    text: `${f('value', 'V')} rms at a plate; with a capacitor input the tube is rated ${f('rating', 'V')}. A choke input or fewer volts keep to the sheet.`,
    gauge: ['value', 'rating', 'V'],
  }),
  first_capacitor_over: ({ figures, f }) => ({
    heading: `first capacitor too large for ${tube(figures)}`,
    text: `${f('value', 'F')} right at the rectifier; the sheet allows ${f('rating', 'F')}. Each switch-on with a hot rectifier pulls a pulse that strips its cathode. Put the farads behind the choke or resistor instead.`,
    gauge: ['value', 'rating', 'F'],
  }),
  plate_ohms_under: ({ figures, f }) => ({
    heading: `too little resistance before ${tube(figures)}`,
    text: `${f('value', 'Ω')} stand before a plate; the sheet wants ${f('rating', 'Ω')} at these volts. A resistor of ${f('series_ohms', 'Ω', 2)} in each plate lead makes it good.`,
  }),
  own_rectifier_unknown_ratings: () => ({
    heading: 'no ratings for your own rectifier',
    text: 'Its inverse volts, peak and first capacitor are not checked here. Hold the answers against its data sheet.',
  }),
  capacitor_volts_over: ({ figures, f }) => ({
    heading: `${part(figures)} over its working volts`,
    text: `With the tubes cold and the mains high it stands at ${f('value', 'V')}; it is rated ${f('rating', 'V')}. Fit one that is rated for that, not for the volts in use.`,
    gauge: ['value', 'rating', 'V'],
  }),
  capacitors_in_series: ({ figures, f }) => ({
    heading: `${part(figures)} stands more than one electrolytic can`,
    text: `${f('volts', 'V')} with the mains high. Use ${f('count', '1')} in series, each of ${f('each_farads', 'F')}, with ${f('ohms', 'Ω')} across each so that they share the volts: leakage alone does not. The resistors are a bleeder too.`,
  }),
  ripple_amps_over: ({ figures, f }) => ({
    heading: `${part(figures)} over its ripple current`,
    text: `${f('value', 'A')} rms heat it; it is rated ${f('rating', 'A')}. Fit one rated for more, or a little resistance before it.`,
    gauge: ['value', 'rating', 'A'],
  }),
  winding_over: ({ f }) => ({
    heading: 'winding over its rating',
    text: `${f('value', 'A')} rms heat the winding, though only ${f('dc', 'A')} are drawn: the pulses are short and high. It is rated ${f('rating', 'A')}. Draw less, use a choke input, or a larger transformer.`,
    gauge: ['value', 'rating', 'A'],
  }),
  choke_under_critical: ({ f }) => ({
    heading: 'choke under the critical inductance',
    text: `${f('value', 'H')}; the current stops in each cycle under ${f('critical', 'H')} at this load, and the volts climb towards the peak as the load falls. A larger choke, or a bleeder that draws more, keeps it flowing.`,
  }),
  never_continuous: () => ({
    heading: 'no choke keeps the current flowing',
    text: 'With half a wave, or with nothing drawn, the current stops in each cycle whatever the choke.',
  }),
  resistor_volts: ({ f }) => ({
    heading: 'the volts decide the resistor’s size',
    text: `${f('watts', 'W')} would do with a ${f('by_watts', 'W')} part, but ${f('volts', 'V')} stand across it: a ${f('by_volts', 'W')} body, or two in series.`,
  }),
  half_wave_iron: () => ({
    heading: 'direct current in the transformer',
    text: 'Half a wave pulls direct current through the winding. Its iron runs nearer to saturation and hotter than the volt-amperes say; give it room.',
  }),
  regulator_capacitor: ({ f }) => ({
    heading: 'too large a capacitor across the regulator',
    text: `${f('value', 'F')} across a gas tube make it flash like a blinker; the sheet allows ${f('rating', 'F')}. Leave it that small.`,
    gauge: ['value', 'rating', 'F'],
  }),
  regulator_dark: ({ figures, f }) => ({
    heading: `${tube(figures)} does not strike`,
    text: `With the mains low and the load at its most it does not see ${f('striking', 'V')}. ` +
      `${at(figures, 'cold_strikes') ? 'It strikes while the tubes are cold, but not again if it once goes out.' : 'It never strikes.'} A smaller feed resistor helps.`,
  }),
  regulator_starved: ({ figures, f }) => ({
    heading: `${tube(figures)} may go out`,
    text: `With the mains low and the load at its most, ${f('value', 'A')} are left for it; it needs ${f('least', 'A')}. A smaller feed resistor leaves it more.`,
  }),
  regulator_over: ({ figures, f }) => ({
    heading: `${tube(figures)} over its current`,
    text: `With the mains high and the load at its least it takes ${f('value', 'A')}; it is rated ${f('rating', 'A')}. A larger feed resistor brings it down.`,
    gauge: ['value', 'rating', 'A'],
  }),
  cold_tubes: ({ f }) => ({
    heading: `cold tubes stand ${f('cold', 'V')}`,
    text: `For ${f('seconds', 's', 2)} nothing is drawn and the last node stands at ${f('cold', 'V')} instead of ${f('warm', 'V')}, with the mains high at ${f('high', 'V')}. Capacitors and tubes must stand that.`,
  }),
  silicon_instead: ({ figures, f }) => ({
    heading: `silicon in place of ${tube(figures)}`,
    text: `Silicon would lift the volts. ${f('ohms', 'Ω')} in each lead of the winding (${f('watts', 'W', 2)} of heat in all) bring them back to what they are, at this load of ${f('amps', 'A')} and no other. The volts then come at once: cold tubes stand ${f('open', 'V')}, with the mains high ${f('high', 'V')}, until they draw. Pin this state, choose silicon, and the page shows every difference.`,
  }),
  separate_heaters: () => ({
    heading: 'rectifiers need heaters apart',
    text: 'In this circuit the cathodes stand at different volts. Each needs its own heater winding, or a tube whose sheet allows the volts from heater to cathode.',
  }),
};

function at(figures: Parameters<CautionMaker>[0]['figures'], name: string): boolean {
  return figures[name] === true;
}
