import { svg } from 'lit';

/**
 * Hatchings for the colours of bands, so that they differ without colour: as printers of arms have shown colours since
 * the seventeenth century (dots for yellow, upright lines for red, level for blue, slanting for green and violet).
 */
export const SWATCHES = svg`<defs>
  <pattern id="swatch-red" width="4" height="4" patternUnits="userSpaceOnUse"><path class="swatch" d="M2 0V4"></path></pattern>
  <pattern id="swatch-blue" width="4" height="4" patternUnits="userSpaceOnUse"><path class="swatch" d="M0 2H4"></path></pattern>
  <pattern id="swatch-green" width="5" height="5" patternUnits="userSpaceOnUse"><path class="swatch" d="M-1 -1L6 6M-1 4L1 6M4 -1L6 1"></path></pattern>
  <pattern id="swatch-violet" width="5" height="5" patternUnits="userSpaceOnUse"><path class="swatch" d="M-1 6L6 -1M-1 1L1 -1M4 6L6 4"></path></pattern>
  <pattern id="swatch-brown" width="5" height="5" patternUnits="userSpaceOnUse"><path class="swatch" d="M-1 -1L6 6M-1 6L6 -1"></path></pattern>
  <pattern id="swatch-grey" width="4.5" height="4.5" patternUnits="userSpaceOnUse"><path class="swatch" d="M2.2 0V4.5M0 2.2H4.5"></path></pattern>
  <pattern id="swatch-yellow" width="5" height="5" patternUnits="userSpaceOnUse"><circle class="swatch spot" cx="2.5" cy="2.5" r="1.1"></circle></pattern>
  <pattern id="swatch-orange" width="6" height="6" patternUnits="userSpaceOnUse"><path class="swatch" d="M1.5 0V3.5M4.5 3V6.5"></path></pattern>
  <pattern id="swatch-pink" width="6" height="5" patternUnits="userSpaceOnUse"><path class="swatch" d="M0 1.2H3.5M3 3.7H6.5"></path></pattern>
  <pattern id="swatch-gold" width="5" height="5" patternUnits="userSpaceOnUse"><circle class="swatch gilt" cx="2.5" cy="2.5" r="1.3"></circle></pattern>
</defs>`;
