/** The rule on harmonics, with its source and whose rule counts. */
export const SPURIOUS_RULE =
  'In the United States a spurious signal of a transmitter under 30 MHz must be 43 dB under the carrier ' +
  '(47 CFR 97.307(d), installed after 1 January 2003). The rules of your country decide, and a measurement at the antenna shows.';
