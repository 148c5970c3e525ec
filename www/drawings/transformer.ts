import type { Given } from './draw.js';
import { area, Draft, label } from './draft.js';
import type { CircuitPart, Drawing, Form } from './kinds.js';
import { generator, resistor, winding } from './symbols.js';

/** Heights of the two wires, and the columns of source, windings, load and terminals. */
const TOP = 56;
const FOOT = 136;
const MIDDLE = (TOP + FOOT) / 2;
const [SOURCE, PRIMARY, SECONDARY, LOAD, END] = [34, 132, 162, 232, 300];
/** A figure alone: nothing of it is drawn but its label. */
const FIGURE: Form = { terminals: [], strokes: [], box: { x: -20, y: -9, width: 40, height: 18 } };

/** The test at low voltage: a source on the primary, what is read at the secondary, and the windings' own resistance. */
export function transformer(given: Given): Drawing {
  const draft = new Draft({ nodes: [], parts: [] }, { boxes: false });
  const part = (reference: string, role: string, field: string): CircuitPart =>
    ({ reference, role, kind: 'source', field, nodes: [], value: null });
  const upright = (x: number, form: Form, reach: number, node: string): Form => {
    draft.wire(node, x, TOP, x, MIDDLE - reach);
    draft.wire(`${node}_return`, x, MIDDLE + reach, x, FOOT);
    return { ...form, terminals: [] };
  };
  draft.wire('primary', SOURCE, TOP, PRIMARY, TOP);
  draft.wire('primary_return', SOURCE, FOOT, PRIMARY, FOOT);
  draft.wire('secondary', SECONDARY, TOP, END, TOP);
  draft.wire('secondary_return', SECONDARY, FOOT, END, FOOT);
  draft.rings.push({ node: 'secondary', at: { x: END, y: TOP } }, { node: 'secondary_return', at: { x: END, y: FOOT } });
  draft.put(part('applied', 'test_source', 'applied_volts'), upright(SOURCE, generator(), 14, 'primary'), SOURCE, MIDDLE, 0, {
    label: label(8, FOOT + 26, 'start', 'over', 84), touch: [area(8, 76, 62, FOOT + 46)],
  }, 'in');
  draft.put(part('primary', 'primary', 'primary_dc_ohms'), upright(PRIMARY, winding(true), 20, 'primary'), PRIMARY, MIDDLE, 90, {
    label: label(PRIMARY - 12, MIDDLE, 'end', 'over', 54), touch: [area(66, 72, PRIMARY + 14, 120)],
  }, 'Rp');
  draft.put(part('secondary', 'secondary', 'secondary_dc_ohms'), upright(SECONDARY, winding(false), 20, 'secondary'), SECONDARY, MIDDLE, 270, {
    label: label(SECONDARY + 10, MIDDLE, 'start', 'over', 46), touch: [area(SECONDARY - 14, 72, SECONDARY + 58, 120)],
  }, 'Rs');
  if (given.texts.get('loaded_volts')) {
    draft.put(part('load', 'test_load', 'loaded_amps'), upright(LOAD, resistor(false), 18, 'secondary'), LOAD, MIDDLE, 90, {
      label: label(LOAD + 12, MIDDLE, 'start', 'over', 70), touch: [area(LOAD - 10, 72, 314, 120)],
    }, 'load');
  }
  draft.put({ ...part('read', 'test_reading', 'secondary_open_volts'), kind: 'figure' }, FIGURE, END - 30, FOOT + 26, 0, {
    label: label(END + 12, FOOT + 26, 'end', 'over', 90), touch: [area(LOAD - 12, FOOT + 4, 318, FOOT + 48)],
  }, 'out, open');
  return { panels: [draft.panel(36, FOOT + 54)], joins: [] };
}
