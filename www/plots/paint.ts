import { nothing, svg, type SVGTemplateResult } from 'lit';

import type { Layout } from './layout.js';

/** Axes, hairlines, bands, lines and their names. */
export function paint(shown: Layout): SVGTemplateResult {
  const { area, x, y } = shown;
  const [right, bottom] = [area.x + area.width, area.y + area.height];
  const yTicks = y.ticks.map(({ value, text }) => ({ at: y.place(value), text }));
  const xTicks = x.ticks.map(({ value, text }) => ({ at: x.place(value), text }));
  return svg`
    <defs>
      <pattern id="hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatching" d="M0 -1V9"></path></pattern>
      <clipPath id="area"><rect x=${area.x} y=${area.y} width=${area.width + 2} height=${area.height}></rect></clipPath>
    </defs>
    ${shown.bands.map((band) => svg`<rect class="band" x=${band.x} y=${band.y} width=${band.width} height=${band.height}></rect>`)}
    <path class="hair" d=${yTicks.filter(({ at }) => at < bottom - 1).map(({ at }) => `M${area.x} ${crisp(at)}H${right}`).join('')}></path>
    <g clip-path="url(#area)">
      ${shown.lines.map(({ ground }) => (ground === '' ? nothing : svg`<path class="ground" d=${ground}></path>`))}
      ${shown.ghosts.map(({ d }) => svg`<path class="ghost" d=${d}></path>`)}
      ${[...shown.lines].sort((one, other) => weight(one.duty) - weight(other.duty)).map(({ d, duty, dash, line }) =>
        svg`<path class=${`line ${duty}${dash === 0 ? '' : ` dash-${dash}`}`} d=${d} data-line=${line.label}></path>`)}
    </g>
    <path class="axis" d=${`M${area.x} ${area.y - 4}V${bottom}H${right}${xTicks.map(({ at }) => `M${crisp(at)} ${bottom}v6`).join('')}`}></path>
    ${yTicks.map(({ at, text }) => svg`<text x=${area.x - 6} y=${at + 5} text-anchor="end">${text}</text>`)}
    <text x=${area.x + 6} y=${area.y + 11}>${y.unit}</text>
    ${xTicks.map(({ at, text }, index) => svg`<text x=${index > 0 && at > right - 8 ? right + 6 : at} y=${bottom + 20} text-anchor=${index > 0 && at > right - 8 ? 'end' : 'middle'}>${text}</text>`)}
    ${shown.marks.map(({ x: left, y: top }) => svg`<circle class="mark" cx=${left} cy=${top} r="5"></circle>`)}
    ${shown.ghosts.map(({ label, name }) => (label === null ? nothing : svg`<text class="name faint" x=${label.x} y=${label.y}>${name}</text>`))}
    ${shown.marks.map(({ place, label }) => (place === null ? nothing : svg`<text class="name" x=${place.x} y=${place.y}>${label}</text>`))}
    ${shown.lines.map(({ label, line, duty }) => (label === null ? nothing : svg`<text class=${`name ${duty}`} x=${label.x} y=${label.y}>${line.label}</text>`))}`;
}

/** Half pixels keep a hairline one pixel wide. */
function crisp(at: number): number {
  return Math.round(at) + 0.5;
}

function weight(duty: string): number {
  return ['family', 'limit', 'other', 'current'].indexOf(duty);
}
