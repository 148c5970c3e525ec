import { SAY, STATES } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import type { Notice } from '../state/session.js';

/** A sentence about the page, and what can be done about it. */
export interface Said {
  readonly key: string;
  readonly text: string;
  readonly action: string;
}

/** What the page says of a state of the session. */
export function saidOf(notice: Notice, form = 1): Said {
  switch (notice) {
    case 'link_not_ours': return { key: notice, text: PAGE.linkNotOurs, action: '' };
    case 'file_not_ours': return { key: notice, text: SAY.file.notOurs, action: '' };
    case 'link_newer':
    case 'file_newer': return { key: notice, text: SAY.file.newer(form), action: '' };
    case 'aside': return { key: notice, text: PAGE.aside, action: PAGE.bringItBack };
    case 'refused': return { key: 'keeping', text: STATES.storageRefused, action: SAY.file.save };
    case 'full': return { key: 'keeping', text: STATES.storageFull, action: SAY.file.save };
    case 'other_tab': return { key: 'tabs', text: STATES.otherTab, action: PAGE.takeOther };
    case 'overwrote': return { key: 'tabs', text: `${STATES.otherTab} ${PAGE.otherAside}`, action: PAGE.bringItBack };
  }
}
