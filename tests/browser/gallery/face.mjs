// Which face a picture is lettered in: a phone's own face is as broad as either of these or lies between them.
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The broadest that the usual systems have, and one as narrow as most phones'. */
const FACE = process.env.TAGSTRIP_FACE ?? 'DejaVu Sans';

/** The environment in which every face without a name is this one. */
export function lettered(face = FACE) {
  const file = join(mkdtempSync(join(tmpdir(), 'face-')), 'fonts.conf');
  const rule = (asked) => `<match target="pattern"><test name="family" qual="any"><string>${asked}</string></test>` +
    `<edit name="family" mode="assign" binding="strong"><string>${face}</string></edit></match>`;
  writeFileSync(file, `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>` +
    `<include ignore_missing="yes">/etc/fonts/fonts.conf</include>${rule('system-ui')}${rule('sans-serif')}</fontconfig>`);
  return { ...process.env, FONTCONFIG_FILE: file };
}
