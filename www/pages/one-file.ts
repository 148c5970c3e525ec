import '../elements/app/ts-app.js';
import '../elements/later.js';
import { Direct } from '../engine/direct.js';
import { Engine } from '../engine/index.js';
import { unpacked } from '../engine/packed.js';

/** The page that is a single file: from a memory stick there is no worker and nothing to fetch, so that all is inside. */
const app = document.querySelector('ts-app');
const engine = document.querySelector('#engine')?.textContent ?? '';
if (app !== null) app.engine = new Engine(new Direct(() => unpacked(engine)));
