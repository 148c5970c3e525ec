/** What the first answers do not need: it is fetched when they stand on the screen. Until then these elements are empty. */
import './build/ts-build.js';
import './changes/ts-changes.js';
import './form/ts-form.js';
import './open-field/ts-open-field.js';
import './parts/ts-parts.js';
import './pictures/ts-pictures.js';
import './pins/ts-pins.js';
import './preferences/ts-preferences.js';
import './readings/ts-readings.js';
import './share/ts-offer.js';
import './share/ts-share.js';
import './sheet/ts-sheet.js';
import './template/ts-template.js';
import './wiring/ts-wiring.js';
import './worked/ts-worked.js';
