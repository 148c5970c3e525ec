// Keys and pointer as the WebDriver standard writes them; plain WebDriver and BiDi say them alike.
const NAMED = {
  Tab: '\uE004', Enter: '\uE007', Escape: '\uE00C', Home: '\uE011', End: '\uE010', Backspace: '\uE003', Delete: '\uE017',
  ArrowLeft: '\uE012', ArrowUp: '\uE013', ArrowRight: '\uE014', ArrowDown: '\uE015', Shift: '\uE008', Control: '\uE009',
};
const code = (key) => NAMED[key] ?? key;
const stroke = (key) => [{ type: 'keyDown', value: code(key) }, { type: 'keyUp', value: code(key) }];
const keyboard = (actions) => [{ type: 'key', id: 'keyboard', actions }];

export const strokes = (keys) => keyboard(keys.flatMap(stroke));

export const chord = (modifier, key) =>
  keyboard([{ type: 'keyDown', value: code(modifier) }, ...stroke(key), { type: 'keyUp', value: code(modifier) }]);

export const click = (x, y) => [{
  type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions: [
    { type: 'pointerMove', x: Math.round(x), y: Math.round(y), duration: 0, origin: 'viewport' },
    { type: 'pointerDown', button: 0 }, { type: 'pointerUp', button: 0 },
  ],
}];
