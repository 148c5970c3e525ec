import assert from 'node:assert/strict';
import test from 'node:test';
import { CALCULATORS } from './calculators.js';
import { byGravity, CAUTION_CODES, cautionLine, cautionText, cautionWords } from './cautions.js';
import { standing, verdictWords } from './verdict.js';
import { DANGER_LAW, DANGER_PROOF, dangerLine, dangerSteps, waited } from './danger.js';
import { partEcho, partEchoShort } from './echo.js';
import { HOW_WE_KNOW } from './how-we-know.js';
import { drawingNote, readingsNote, refusedCount, SAY, staleWords, STATES } from './interface.js';
import type { BareOutcome, Figures, Situation } from './kinds.js';
import { BASE_CODES, baseWords, ELECTRODE_CODES, electrodeWords, joinWords, NODE_CODES, nodeWords, terminalWords } from './node-words.js';
import { NULL_CODES, nullWords } from './nulls.js';
import { KIND_CODES, kindWords, ROLE_CODES, roleWords, RULE_CODES, ruleWords } from './part-words.js';
import { PROBLEM_CODES, problemText } from './problems.js';
import { REASON_CODES, reasonWords } from './reasons.js';
import { READER_CODES, unreadText } from './unread.js';
import { told, USUAL_WAY, type Way } from './way.js';

const VALVES: Way = { ...USUAL_WAY, tube: 'valve', supply: 'HT', decimal: 'comma', length: 'inch' };
/** What must never be said. A screwdriver may only be forbidden. */
const FORBIDDEN = /\b(error|invalid|illegal|please|sorry|oops|consult|expert|fatal|crash|undefined|NaN|null|Infinity)\b|\[object/i;
const SENTENCE = /[.:)?”]$/;

function plain(text: string, where: string): void {
  assert.doesNotMatch(text, FORBIDDEN, where);
  assert.doesNotMatch(text, / {2}|\s$|^\s|\.\.|,\.| ,/, `${where}: ${text}`);
  for (const said of text.matchAll(/.{0,20}screwdriver/g)) assert.match(said[0], /never (with )?a screwdriver/, where);
}

function sentence(text: string, where: string): void {
  plain(text, where);
  assert.match(text, SENTENCE, `${where}: ${text}`);
  assert.match(text, /^[\p{Lu}\p{N}“−+–]/u, `${where}: ${text}`);
}

/** Every string inside a value, functions called with names that stand for a person's own. */
function* strings(value: unknown, where: string): Generator<readonly [string, string]> {
  if (typeof value === 'string') yield [where, value];
  else if (typeof value === 'function') yield* strings(value.length === 0 ? '' : (value as (given: unknown, way: Way) => unknown)(7, VALVES), where);
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) yield* strings(inner, `${where}.${key}`);
  }
}

const FIGURES: Figures = {
  volts: 263, rating: 250, node: 'plate', pin: 'V1.5', wait_seconds: 9.6, capacitors: ['C3', 'C4'], parts: ['C3', 'C4'],
  watts: 1.4, amps: 0.02, ohms: 2e6, bias_volts: -0.2, plate_amps: 2e-6, want_volts: 40, most_volts: 28,
  headroom_db: 3.2, position: 2, microphone_volts: 0.03, least_db: 7.3, most_db: 8.5, part: 'C4', tolerance: 0.1,
  plate_volts: 135, own_seconds: 9.6, tube: '12AX7', which: 'low', parameter: 'mu_spread', value: 0.25, residual_percent: 12, point: 3, under: 0.2, over: 0.8,
};
const INPUTS: Figures = {
  positions: [{ label: 'Round', farads: 20e-9 }, { label: 'Clear', farads: 470e-12 }],
  microphone_volts: '30 mV', tone: 'two-knob', plate_ohms: '22Ok', level_ohms: 500e3, hertz: 1000, kind: 'resistor', text: '4k7',
  want_lift_db: 12,
};
const OUTCOME: BareOutcome = {
  answers: {
    gain_db_1k: [8.5, 0.2], lift_db: [0, 7.9], output_volts: [0.079, 0.031], headroom_db: 31, source_ohms_seen: [51e3, 51e3], load_ohms_seen: [270e3, 270e3],
    gain: 47, gain_db: 33.4, plate_volts: 135, max_output_volts: 28, best_gain_db: -1, best_hertz: 12e3, corners_hertz: [998],
    value: 4700, tolerance: 0.05, bands: ['yellow', 'violet', 'red', 'gold'],
  },
  circuit: {
    nodes: [{ name: 'supply', volts: 263 }, { name: 'plate', volts: 135 }, { name: 'throw_1', volts: 0 }],
    parts: [
      { reference: 'R3', role: 'plate_resistor', kind: 'resistor', field: 'plate_ohms', nodes: ['supply', 'plate'], value: 220e3 },
      { reference: 'C3', role: 'coupling', kind: 'capacitor', field: 'positions[0].farads', nodes: ['plate', 'throw_1'], value: 20e-9 },
      { reference: 'C4', role: 'coupling', kind: 'capacitor', field: 'positions[1].farads', nodes: ['plate', 'throw_1'], value: 470e-12 },
    ],
  },
  parts: [
    { reference: 'R3', kind: 'resistor', role: 'plate_resistor', field: 'plate_ohms', value: 220e3, tolerance: 0.05, watts: 0.5, volts: null, amps: null, rule: 'twice_watts' },
    { reference: 'C3', kind: 'capacitor', role: 'coupling', field: 'positions[0].farads', value: 20e-9, tolerance: 0.1, watts: null, volts: 400, amps: null, rule: 'switch_on' },
  ],
};

test('fixed texts are plain', () => {
  for (const [where, text] of strings({ SAY, STATES, HOW_WE_KNOW, DANGER_LAW, DANGER_PROOF }, 'words')) plain(text, where);
  for (const words of CALCULATORS) for (const [where, text] of strings({ ...words, lead: '', remarks: '', face: '' }, words.id)) if (text !== '') plain(text, where);
});

test('labels are names and helps are sentences', () => {
  for (const words of CALCULATORS) {
    sentence(words.summary, words.id);
    sentence(words.paragraph, words.id);
    for (const fields of [words.inputs, words.answers]) {
      for (const [key, { label, help }] of Object.entries(fields)) {
        assert.match(label, /[^.]$/, `${words.id} ${key}`);
        assert.ok(label.length <= 32, `${words.id} ${key}: ${label}`);
        sentence(help, `${words.id} ${key}`);
      }
    }
    for (const text of Object.values(words.how)) sentence(text, words.id);
  }
});

test('every caution says what is so, with its figures, without them, and with odd ones', () => {
  const odd: Figures = { volts: Number.NaN, node: 'new_node', position: 'Clear', capacitors: 'C3', parts: [], which: 'side', wait_seconds: null };
  for (const code of [...CAUTION_CODES, 'not_yet_known', 'toString', 'constructor']) {
    for (const figures of [FIGURES, {}, odd]) {
      for (const severity of ['danger', 'limit', 'note'] as const) {
        for (const way of [USUAL_WAY, VALVES]) {
          const caution = { code, severity, about: null, figures };
          const { heading } = cautionWords(caution, INPUTS, way);
          assert.match(heading, /^(Danger|Limit|Note): /);
          sentence(cautionText(caution, INPUTS, way), code);
          if (way === VALVES) assert.doesNotMatch(cautionText(caution, INPUTS, way), /\btube|B\+/);
        }
      }
    }
  }
});

test('an exceeded rating has its gauge', () => {
  const { gauge } = cautionWords({ code: 'plate_dissipation', severity: 'limit', about: null, figures: { watts: 1.4, rating: 1 } });
  assert.deepEqual(gauge, { value: 1.4, rating: 1, unit: 'W' });
});

test('dangers come first, and a note leads to no line at the top', () => {
  const of = (severity: 'danger' | 'limit' | 'note') => ({ code: 'cut_off', severity, about: null, figures: {} });
  assert.deepEqual(byGravity([of('note'), of('danger'), of('limit')]).map((each) => each.severity), ['danger', 'limit', 'note']);
  assert.equal(cautionLine([of('note')]), '');
  assert.match(cautionLine([of('note'), of('limit')]), /^Limit: /);
});

test('every problem has a sentence, whatever comes with it', () => {
  for (const code of [...PROBLEM_CODES, ...READER_CODES, 'not_yet_known', '__proto__']) {
    for (const words of [CALCULATORS[0], undefined]) {
      for (const field of ['plate_ohms', 'positions[1].farads', 'positions[1]', 'tube.mu', 'nothing.like[3].it', '']) {
        sentence(problemText({ field, code }, { words, inputs: INPUTS }), code);
        sentence(problemText({ field, code, least: 1, most: 6, about: 'level_ohms', mends: [{ text: '220k', value: 220e3 }] }, { words, inputs: INPUTS, way: VALVES }), code);
      }
    }
  }
  for (const code of [...REASON_CODES, 'new_reason', '']) for (const node of ['plate', '', 'new_node']) sentence(reasonWords(code, node), code);
  for (const code of NULL_CODES) sentence(nullWords(code), code);
  for (const code of READER_CODES) sentence(unreadText({ field: '', code }, '', ''), code);
});

test('a range is told in the field’s unit, and none where it may be', () => {
  const rows = [{ key: 'cathode_ohms', shape: 'quantity', unit: 'Ω', least: 1e-3, most: 1e9, zero: 'none' }];
  const text = problemText({ field: 'cathode_ohms', code: 'too_large', least: 1e-3, most: 1e9 }, { words: CALCULATORS.find((each) => each.id === 'stage'), rows });
  assert.equal(text.replaceAll('\u00a0', ' '), 'The cathode resistor must lie between 1 mΩ and 1 GΩ, or be 0 for none.');
});

test('leads and remarks are sentences with and without answers', () => {
  for (const words of CALCULATORS) {
    for (const [inputs, outcome] of [[INPUTS, OUTCOME], [{}, {}], [{ ...INPUTS, tone: 'none' }, OUTCOME], [INPUTS, { answers: { gain_db_1k: [null, null] } }]] as const) {
      for (const position of [0, 1, 5]) {
        for (const way of [USUAL_WAY, VALVES]) {
          const situation: Situation = { inputs, outcome, position, way };
          const lead = words.lead(situation);
          sentence(told(lead.sentence, way), words.id);
          plain(`${lead.label} ${lead.figure}`, words.id);
          for (const remark of words.remarks?.(situation) ?? []) sentence(remark, words.id);
        }
      }
    }
  }
});

test('the trade’s tenth of the capacitor is one sentence, promises nothing, and has the person’s own figures', () => {
  const [remark = ''] = CALCULATORS.find(({ id }) => id === 'voice')?.remarks?.({ inputs: INPUTS, outcome: OUTCOME, position: 1, way: USUAL_WAY }) ?? [];
  assert.equal(remark.match(/\.(?= |$)/g)?.length, 1);
  assert.match(remark, /it depends on the load/);
  assert.match(remark, /\bmay\b/);
  for (const own of ['51\u00a0kΩ', '470\u00a0pF', '+7.9\u00a0dB', '1 to 43']) assert.ok(remark.includes(own), own);
});

test('names of nodes, terminals, parts and rules', () => {
  for (const code of [...NODE_CODES, 'n3', 'throw_2', 'new_node']) plain(nodeWords(code, 'V1.5'), code);
  for (const code of [...ELECTRODE_CODES, 'new_electrode']) plain(electrodeWords(code), code);
  for (const code of [...BASE_CODES, 'new_base']) plain(baseWords(code), code);
  for (const terminal of ['V1.5', 'S1.common', 'S1.2', 'Bass.wiper', 'ground', 'bass_top', 'heater_a', 'R1.1', 'odd']) plain(terminalWords(terminal), terminal);
  for (const code of [...ROLE_CODES, 'new_role']) plain(roleWords(code), code);
  for (const code of [...KIND_CODES, 'new_kind']) plain(kindWords(code), code);
  for (const code of [...RULE_CODES, 'new_rule']) plain(ruleWords(code), code);
  assert.equal(nodeWords('plate', 'V1.5'), 'plate, pin 5');
  assert.equal(terminalWords('V1.5'), 'V1 pin 5');
  assert.equal(joinWords('V1.5', 'supply', 'R3'), 'R3 from V1 pin 5 to B+.');
  assert.equal(joinWords('Bass.wiper', 'ground', null), 'Wire from wiper of Bass to ground.');
  assert.equal(joinWords('V1.6', 'ground', 'C2', undefined, 'from'), 'C2 from V1 pin 6 to ground, plus end at V1 pin 6.');
  assert.equal(joinWords('mic', 'V1.4', null), 'Wire from microphone to V1 pin 4.');
});

test('danger is told in five steps, in their order, and never with a screwdriver', () => {
  for (const wait of [{ wait_seconds: 9.6 }, { wait_seconds: 0 }, { wait_seconds: 1e4 }, { wait_seconds: null }, { least_wait_seconds: 60 }, {}]) {
    const steps = dangerSteps({ ...wait, capacitors: ['C3', 'C4'] });
    assert.equal(steps.length, 5);
    for (const { word, more } of steps) plain(`${word}: ${more}`, word);
    for (const volts of [{ volts: 263 }, {}]) sentence(dangerLine({ ...wait, ...volts, capacitors: ['C1'] }), 'line');
  }
  const words = (figures: Figures, hazard?: 'radio') => dangerSteps(figures, hazard).map((step) => step.word.replaceAll('\u00a0', ' '));
  assert.deepEqual(words({ wait_seconds: 9.6 }), ['Unplug', 'Wait 10 s', 'Meter', 'Discharge', 'Touch']);
  assert.deepEqual(words({}), ['Unplug', 'Wait 60 s or more', 'Meter', 'Discharge', 'Touch'], 'no supply is known');
  assert.deepEqual(words({ wait_seconds: null }), ['Unplug', 'Expect charge', 'Meter', 'Discharge', 'Touch'], 'no bleeder');
  assert.equal(words({}, 'radio')[0], 'Key off');
  for (const seconds of [0, 1, 9.99, 10, 601, 5000]) assert.ok(waited(seconds) >= seconds);
});

test('a reading is right, possible or wrong, and a wrong one says what to do next', () => {
  const point = { unit: 'V', least: 95.5, most: 134.2, usual_least: 103.5, usual_most: 126.1 };
  for (const [value, stands] of [[115, 'usual'], [127.2, 'usual'], [131, 'possible'], [100, 'possible'], [310, 'high'], [60, 'low'], [-3, 'low']] as const) {
    assert.equal(standing(point, value), stands, String(value));
    for (const parts of [[], ['R3'], ['R3', 'C3', 'V1']]) {
      const { said, next } = verdictWords(point, value, parts, VALVES);
      sentence(said, String(value));
      if (stands !== 'usual') sentence(next, String(value));
    }
  }
  assert.equal(standing({ unit: 'V', least: 0, most: 0, usual_least: 0, usual_most: 0 }, 0.01), 'usual', 'the last figure of a display');
});

test('what the circuit adds to an echo', () => {
  const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');
  assert.equal(spaced(partEcho('plate_ohms', OUTCOME)), 'It drops 128 V and takes 0.07 W: fit ½ W.');
  assert.equal(spaced(partEchoShort('plate_ohms', OUTCOME)), '0.07 W: use ½ W');
  assert.equal(spaced(partEcho('positions[0].farads', OUTCOME)), 'It stands 135 V, and all of B+ until the tube is warm: fit 400 V or more.');
  assert.equal(partEcho('nothing', OUTCOME), '');
  assert.equal(partEcho('plate_ohms', {}), '');
});

test('states and notes', () => {
  assert.equal(staleWords([{ reference: 'R3', value: '220k' }]), 'Last good answers, for R3 = 220k. They wait for R3.');
  for (const text of [staleWords([]), refusedCount(0), refusedCount(2), readingsNote('10 MΩ', VALVES), drawingNote(2), drawingNote(null)]) sentence(text, text);
});

test('trade words follow the person', () => {
  assert.equal(told('Tubes and a tube on B+', VALVES), 'Valves and a valve on HT');
});
