/** How near fitted tubes come to published charts: the bounds that the test of the charts holds them to. */
export const CHART_AGREEMENT =
  'Published resistance-coupled charts of the 12AX7, ECC83, 12AU7 and 6SL7GT that played no part in the fit. At 180 V ' +
  'and up half of the rows lie within 3\u00a0% and none over 5\u00a0% beyond what the print rounds away; at 90 V none over 12\u00a0%. ' +
  'The charts of the 6SN7GT were measured on a tube unlike its sheet’s and lie about 11\u00a0% off.';
