// Speech in noise against figures computed outside the project: the intelligibility index, A-weighting, and whole stages.
import { atMost, run, told } from '../measuring/run.mjs';

const CHECK = ['test', '--quiet', '--no-fail-fast', '-p', 'tagstrip-core', '--test', 'engine', '--', '--nocapture', 'hearing::', 'cases::'];

export function measure() {
  const { code, text } = run('cargo', CHECK);
  const said = (name) => new RegExp(`hearing\\.${name} (\\d+)(?: worst ([\\d.e-]+))?`).exec(text);
  const [totals, bands, weighted] = ['sii_totals', 'sii_bands', 'a_totals'].map(said);
  const cases = /cases\.hearing (\d+) figures (\d+)/.exec(text);
  if ([totals, bands, weighted, cases].includes(null)) throw new Error(`the checks said nothing, exit ${code}`);
  return [
    told('cases.hearing.stages', Number(cases[1]), 'rows', `${cases[2]} figures`),
    told('cases.hearing.sii_bands', Number(bands[1]), 'rows'),
    atMost('cases.hearing.sii_worst', Number(totals[2]), `of ${totals[1]} totals`, 1.5e-6),
    atMost('cases.hearing.a_weighted_worst', Number(weighted[2]), `dB of ${weighted[1]} totals`, 1e-4),
    atMost('cases.hearing.checks_failed', code === 0 ? 0 : 1, 'exit', 0),
  ];
}
