// Combinations of inputs that draw differently.
const OPTIONS = [
  {}, { tone: false }, { decoupling: true }, { decoupling: true, decouplingCapacitor: false }, { bypass: false },
  { cathode: false }, { bias: true }, { ownCapacitor: true }, { ownCapacitor: true, source: false }, { source: false },
  { loadCapacitance: false }, { twin: false }, { closed: 1 },
  { decoupling: true, bias: true, ownCapacitor: true, bypass: false, tone: false },
  { cathode: false, bias: true, source: false, loadCapacitance: false },
];

const told = (choice) => Object.entries(choice).map(([key, value]) => `${key} ${value}`).join(', ') || 'as it starts';

/** `voice` with one to six positions, and `stage`, over the options that change their drawing. */
export const CASES = [
  ...[1, 2, 3, 6].flatMap((positions) => OPTIONS.map((option) => ({
    name: `voice, ${positions} positions, ${told(option)}`, calculator: 'voice', how: 'voiceNetlist', given: [{ positions, ...option }],
  }))),
  ...[4, 5].map((positions) => ({ name: `voice, ${positions} positions`, calculator: 'voice', how: 'voiceNetlist', given: [{ positions }] })),
  ...OPTIONS.map((option) => ({ name: `stage, ${told(option)}`, calculator: 'stage', how: 'stageNetlist', given: [option] })),
];

const series = (parts, parallel = false) => ({ place: 'series', parts, parallel });
const shunt = (parts, parallel = false) => ({ place: 'shunt', parts, parallel });

/** Ladders, from one part to more than three panels hold. */
export const LADDERS = [
  ['one capacitor', [series('C')]],
  ['coupling', [series('C'), shunt('R')]],
  ['a shunt alone', [shunt('RC')]],
  ['everything in one branch', [series('RCL', true), shunt('RCL'), series('RCL'), shunt('RCL', true)]],
  ['low-pass', [shunt('C'), series('L'), shunt('C'), series('L'), shunt('C')]],
  ['twelve branches', [...Array(6)].flatMap(() => [series('RC', true), shunt('RL')])],
].flatMap(([name, branches]) => [true, false].map((source) => ({
  name: `filter, ${name}${source ? '' : ', no source resistance'}`, calculator: 'filter', how: 'filterNetlist', given: [branches, source],
})));
