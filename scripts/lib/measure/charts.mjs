// Gains of published resistance-coupled charts, predicted by tubes that were fitted to data sheets alone.
import { run } from '../measuring/run.mjs';

export function measure() {
  const { text } = run('cargo', ['run', '--quiet', '-p', 'tagstrip-tools', '--bin', 'charts']);
  return text.trim().split('\n').filter((line) => line.startsWith('charts_')).map((line) => {
    const [name, value, unit, bound, verdict, ...remark] = line.split(', ');
    return { name: name.replace('charts_', 'charts.'), value, unit, bound, holds: verdict === 'holds', remark: remark.join(', ') };
  });
}
