import { unreadText } from '../../words/index.js';
import type { Desk } from './desk.js';
import type { Lug, TestPoint } from './kinds.js';
import { isRecord } from './paths.js';
import type { View } from './view.js';

/** A reading as the page takes it: its volts and the parts that join at its point, or what is wrong with the text. */
export type Taken = { readonly value: number; readonly parts: readonly string[] } | { readonly problem: string };

/** What was read on this lug's points, as typed: it goes with the build. */
export function readingsOf(lug: Lug): Readonly<Record<string, string>> {
  const held = lug.rest['readings'];
  if (!isRecord(held)) return {};
  return Object.fromEntries(Object.entries(held).filter((pair): pair is [string, string] => typeof pair[1] === 'string'));
}

/** The lug with a reading put down, or taken away where the text is empty. */
export function withReading(lug: Lug, point: string, text: string): Lug {
  const { [point]: _, ...others } = readingsOf(lug);
  const readings = text === '' ? others : { ...others, [point]: text };
  const { readings: __, ...rest } = lug.rest;
  return { ...lug, rest: Object.keys(readings).length === 0 ? rest : { ...rest, readings } };
}

/** What is to be said of a point's reading; nothing where none was typed, or the reader has not answered yet. */
export function readingAt(desk: Desk, view: View, { name, unit }: TestPoint): Taken | null {
  const text = readingsOf(view.lug)[name]?.trim() ?? '';
  const said = text === '' ? undefined : desk.reading(text, unit);
  if (said === undefined) return null;
  if ('problem' in said) return { problem: unreadText(said.problem, text, unit, view.way) };
  const bought = new Set((view.work.outcome?.parts ?? []).map(({ reference }) => reference));
  const here = view.circuit?.parts.filter(({ nodes, reference }) => nodes.includes(name) && (bought.has(reference) || /^V\d/.test(reference))) ?? [];
  return { value: said.value, parts: here.map(({ reference }) => reference) };
}
