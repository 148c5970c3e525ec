import { NO_BREAK, split } from './quantity.js';

/** A figure as a person would type it, so that a field can start with it: "220k", "470 pF", "263 V", "45 %". */
export function typedText(value: number, unit: string, percent = false): string {
  if (percent) return `${plain(value * 100)} %`;
  const { figure, unit: symbol } = split(value, unit, { digits: 6 });
  const figures = figure.replaceAll(',', '').replace('\u2212', '-').replaceAll(NO_BREAK, ' ');
  if (unit === 'Ω') return figures + symbol.replace('Ω', '');
  return symbol === '' ? figures : `${figures} ${symbol}`;
}

/**
 * The text for `next` written the way `typed` was, whose value is `was`: after "2k2" comes "2k4", after "470 mmf"
 * "430 mmf", after ".02" ".018". Where that would read awkwardly, the usual way of writing.
 */
export function writtenLike(next: number, typed: string, was: number, unit: string): string {
  const usual = typedText(next, unit);
  const parts = /^([-\u2212]?)(\d*[.,]?\d+)(.*)$/s.exec(typed.trim());
  if (parts === null || !(Math.abs(was) > 0)) return usual;
  const [, sign = '', digits = '', rest = ''] = parts;
  const inside = /^([A-Za-zµμΩ])(\d+)$/.exec(rest);
  const number = Number(`${digits.replace(',', '.')}${inside === null ? '' : `.${inside[2]}`}`);
  if (inside !== null && /[.,]/.test(digits)) return usual;
  if (/\d/.test(inside === null ? rest : '')) return usual;
  const scale = Math.abs(was) / number;
  const count = Math.abs(next) / scale;
  // A bare number that is not its value in some power of ten is a code, such as 104.
  if (rest.trim() === '' && Math.abs(Math.log10(scale) - Math.round(Math.log10(scale))) > 1e-6) return usual;
  if (!Number.isFinite(count) || !fits(count, number, rest) || Math.sign(next) !== Math.sign(was)) return usual;
  const [whole = '', part = ''] = plain(count).split('.');
  if (inside !== null) return `${sign}${whole}${inside[1]}${part}`;
  const first = /^[.,]/.test(digits) && whole === '0' ? '' : whole;
  return `${sign}${first}${part === '' ? '' : (digits.includes(',') ? ',' : '.') + part}${rest}`;
}

/** Whether a count stays in the span in which its way of writing is usual. */
function fits(count: number, number: number, rest: string): boolean {
  if (rest.trim() === '' && number < 1) return count >= 1e-5 && count < 1;
  return count >= (number < 1 ? 1e-4 : 1) && count < 1000;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(6)));
}
