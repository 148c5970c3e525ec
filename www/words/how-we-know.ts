import { CHART_AGREEMENT } from './agreement.js';

/** A section of the page "How we know". */
export interface Section {
  readonly heading: string;
  readonly paragraphs: readonly string[];
}

/** The page's title. */
export const HOW_WE_KNOW_TITLE = 'How we know';

/** The page "How we know": what stands behind the figures, for someone who will put a meter to them. */
export const HOW_WE_KNOW: readonly Section[] = [
  {
    heading: 'One circuit',
    paragraphs: [
      'A calculator with a drawing has one netlist: parts, and the nodes that they join. The answers, the spread that ' +
        'your parts allow, the volts at each pin, the parts to buy, the wiring and the drawing all come from it. None ' +
        'of them has a formula of its own that could disagree with the rest.',
      'Where a handbook has a formula, it is used to check the circuit, not to answer.',
    ],
  },
  {
    heading: 'The tubes',
    paragraphs: [
      'A triode is described by four figures: how much current it passes, its mu, how much mu differs along the cathode, ' +
        'and the volts that its grid has by itself. The law is space charge with the initial speed of the electrons. The ' +
        'four are fitted to the operating points and cut-offs that makers printed, and nothing else.',
      `They were then held against charts. ${CHART_AGREEMENT}`,
      'Where a sheet gave too few points, the figure that stayed at its usual value is named with the tube. Tubes of one ' +
        'type differ: the least and most at each test point allow 20 % in current and 15 % in mu.',
    ],
  },
  {
    heading: 'Coils, and slips in the old tables',
    paragraphs: [
      'A coil is worked from Lorenz’s exact formula of 1879 with Rosa’s corrections for round wire, or, where turns are few, ' +
        'thick or far apart, as the sum of its rings. Ten thousand random coils of 3 to 150 turns were summed ring by ring ' +
        'outside the project: none is off by more than 0.5 %.',
      'Printed tables are not all right. As transcribed, Nagaoka’s of 1909 is off at seven of the 21 places seen, from four to ten ' +
        'in diameter over length, by 33 millionths at 7.5. Rosa’s B of 1906 runs up to 0.0011 high from 20 turns on, since its ' +
        'distances were rounded. In NBS Circular 74, as it is remembered here, the last figures at 1.55 and 14 are one off, and so ' +
        'are some of Rosa’s A and of the skin-effect table. The exact figures stand here in their place.',
      'Loss and self-capacitance are R. G. Medhurst’s measurements of 1947, mostly from memory. Two entries of his table of ' +
        'losses do not fit their neighbours and are not used: 1.20 for the flattest coil at a wire of 0.4 of the pitch, and ' +
        '2.27 for ten diameters at 0.7. His row for endless coils agrees with a computation for perfect conductors within 0.005.',
    ],
  },
  {
    heading: 'The supply',
    paragraphs: [
      'A rectifier tube is its sheet’s published drop and the law of space charge. Of the eleven printed volts ' +
        'at hand all but two come out within 1.5\u00a0%: the 5V4G, whose printed row asks a higher peak than the same sheet allows, is ' +
        '2\u00a0% low, and the 5U4G of an old chart 3\u00a0% low. Why is not known: a larger drop, as older sheets have it, would make it lower.',
      'A choke-input row of that chart is left out: it does not say what winding it was taken with, and the volts hang on it. The ' +
        'sawtooth formula for ripple is a few per cent high, since the capacitor is being charged for part of the time.',
      'Whole supplies were integrated independently, and the circuit that O. H. Schade drew his curves from was computed over a grid.',
    ],
  },
  {
    heading: 'What you should measure',
    paragraphs: [
      'Your meter is part of the circuit while it reads, so its resistance is solved with the rest. Least and most take ' +
        'every part to the tolerance it is marked with, the tube to its spread and the mains to 5\u00a0% either way, put ' +
        'together as independent chances: a good build falls outside one time in two hundred. Nine in ten are ' +
        'inside the narrower figures that stand with them.',
      'A reading outside the range means a wrong part, a wrong joint or a worn tube: that is what the range is for.',
    ],
  },
  {
    heading: 'Tanks and low-pass filters',
    paragraphs: [
      'The values of a pi, a pi-L or a filter ladder come from closed formulas that are as old as the art; what they do ' +
        'comes from the circuit made of them. A figure of Q has two published meanings, some ten percent apart in the ' +
        'parts: one counts the input side, the other both sides. Both are there by name, and each is held to a published design.',
      'A widely copied table of Chebyshev elements has misprints. At 0.01 dB it gives 0.7653 for the first of five, where ' +
        '0.7563 is right, and 0.0797 for the last of seven, where 0.7969 is; at 0.1 dB it gives 1.5374 for the fourth of ' +
        'seven, where 1.5734 is. The formula is used, and the rest of the table agrees with it.',
      'A chart of 1947 was read again and lies up to seven percent off the formula it was drawn from. The plate gaps come ' +
        'from a handbook’s table, from memory. The margins of the parts list and the size of the blocking capacitor are ' +
        'common practice without a source.',
    ],
  },
  {
    heading: 'The same everywhere',
    paragraphs: [
      'The engine uses no arithmetic of the device but the four rules and the square root. The rest is its own, so a ' +
        'phone, a desk computer and the test machine give the same figures to the last bit. A test holds them to it over ' +
        'a million evaluations.',
    ],
  },
  {
    heading: 'Where each check comes from',
    paragraphs: [
      'Expected figures never come from the engine itself. They are published tables, standards, or the same circuit ' +
        'worked with other tools, and each row names its source. A figure that could only be recalled and not looked up ' +
        'again says "from memory".',
      'Where a figure and its source disagree, the finding is written down. It is not tuned away.',
    ],
  },
  {
    heading: 'What it does not know',
    paragraphs: [
      'Your layout: stray capacitance, hum from the heater wiring, a ground that carries two currents. Your microphone ' +
        'beyond the figures that you give for it. Whether a voice is understood: the page says how far the consonants ' +
        'rise, which may help, and no more.',
      'The builds shown as examples are invented, and so are their figures.',
    ],
  },
];
