// With capacitors as sold: how far the loss is from the exact filter's, the coils fitted again, against rounding alone.
// Worked here from the parts that are answered, by a chain of matrices, and not from what the engine says of itself.
import { shipped } from '../measuring/package.mjs';
import { atMost, quantile, told } from '../measuring/run.mjs';

const OHMS = 50;
const FAMILIES = [['butterworth', 0.1], ['chebyshev', 0.01], ['chebyshev', 0.1], ['chebyshev', 0.5]];
const BANDS = [1.9e6, 3.885e6, 5.36e6, 7.2e6, 10.1e6, 14.3e6, 18.1e6, 21.4e6, 28.5e6, 50.4e6];
const PLACES = 400;

/** Loss in decibels of a ladder of parts without loss between equal ends. */
function loss({ capacitors, coils }, first, hertz) {
  let [a, b, c, d] = [1, 0, 0, 1];
  const omega = 2 * Math.PI * hertz;
  const count = capacitors.length + coils.length;
  for (let k = 0; k < count; k += 1) {
    const shunt = (k % 2 === 0) === (first === 'capacitor');
    if (shunt) {
      const y = omega * capacitors[k >> 1] * OHMS;
      [a, c] = [a - b * y, c + d * y];
    } else {
      const z = (omega * coils[k >> 1]) / OHMS;
      [b, d] = [b + a * z, d - c * z];
    }
  }
  return 10 * Math.log10(((a + d) ** 2 + (b + c) ** 2) / 4);
}

function deviations(exact, other, first, cutoff, carrier) {
  const off = (hertz) => Math.abs(loss(other, first, hertz) - loss(exact, first, hertz));
  let pass = 0;
  for (let k = 1; k <= PLACES; k += 1) pass = Math.max(pass, off((cutoff * k) / PLACES));
  return { pass, harmonic: off(2 * carrier) };
}

export async function measure() {
  const { work } = await shipped();
  const rows = [];
  for (const series of ['E12', 'E24']) {
    const found = [];
    for (const [family, ripple_db] of FAMILIES) {
      for (let order = 2; order <= 9; order += 1) {
        if (family === 'chebyshev' && order % 2 === 0) continue;
        for (const first of ['capacitor', 'coil']) {
          for (const carrier_hertz of BANDS) {
            const cutoff_hertz = 1.1 * carrier_hertz;
            const inputs = { family, ripple_db, order, first, carrier_hertz, cutoff_hertz, ohms: OHMS };
            const exact = work('lowpass', { ...inputs, series: 'exact' }).answers;
            const fitted = work('lowpass', { ...inputs, series }).answers;
            const rounded = { capacitors: fitted.capacitors, coils: exact.coils };
            const each = (parts) => deviations(exact, parts, first, cutoff_hertz, carrier_hertz);
            found.push({ alone: each(rounded), fitted: each(fitted), inputs });
          }
        }
      }
    }
    rows.push(told(`lowpass.preferred.${series}.filters`, found.length, 'filters'));
    for (const what of ['pass', 'harmonic']) {
      const name = `lowpass.preferred.${series}.${what}`;
      const worse = found.map(({ alone, fitted }) => fitted[what] - alone[what]);
      const at = worse.indexOf(Math.max(...worse));
      rows.push(
        // What is left to rounding of the sums, and to places between those that are looked at.
        atMost(`${name}.worse_than_rounding`, Math.max(0, ...worse), 'dB', 1e-3, worse[at] > 1e-3 ? JSON.stringify(found[at].inputs) : undefined),
        told(`${name}.worst`, Math.max(...found.map(({ fitted }) => fitted[what])), 'dB'),
        told(`${name}.worst_by_rounding`, Math.max(...found.map(({ alone }) => alone[what])), 'dB'),
        told(`${name}.middle`, quantile(found.map(({ fitted }) => fitted[what]), 0.5), 'dB'),
        told(`${name}.middle_by_rounding`, quantile(found.map(({ alone }) => alone[what]), 0.5), 'dB'),
      );
    }
  }
  return rows;
}
