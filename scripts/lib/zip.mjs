// A zip of the same bytes wherever and whenever it is made: names in order, one date for all, nothing of the machine.
import { deflateRawSync } from 'node:zlib';

/** 1 January 1980, the first date that a zip can say. */
const DATE = 0x0021;
const UTF8 = 0x0800;
const VERSION = 20;
const DEFLATED = 8;

/** The zip of `files`, each a name and its bytes. */
export function zipped(files) {
  const [local, central] = [[], []];
  let at = 0;
  for (const { name, body } of [...files].sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const [title, packed] = [Buffer.from(name, 'utf8'), deflateRawSync(body, { level: 9 })];
    const same = Buffer.alloc(26);
    same.writeUInt16LE(VERSION, 0);
    same.writeUInt16LE(UTF8, 2);
    same.writeUInt16LE(DEFLATED, 4);
    same.writeUInt16LE(0, 6);
    same.writeUInt16LE(DATE, 8);
    same.writeUInt32LE(crc(body), 10);
    same.writeUInt32LE(packed.length, 14);
    same.writeUInt32LE(body.length, 18);
    same.writeUInt16LE(title.length, 22);
    local.push(Buffer.from('PK\x03\x04', 'latin1'), same, title, packed);
    const more = Buffer.alloc(14);
    more.writeUInt32LE(at, 10);
    central.push(Buffer.from('PK\x01\x02', 'latin1'), Buffer.from([VERSION, 0]), same, more, title);
    at += 30 + title.length + packed.length;
  }
  const directory = Buffer.concat(central);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(files.length, 4);
  end.writeUInt16LE(files.length, 6);
  end.writeUInt32LE(directory.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...local, directory, Buffer.from('PK\x05\x06', 'latin1'), end]);
}

/** The check sum that a zip carries; Node has one of its own only from 22 on. */
function crc(body) {
  let sum = ~0;
  for (const byte of body) sum = TABLE[(sum ^ byte) & 255] ^ (sum >>> 8);
  return ~sum >>> 0;
}

const TABLE = Array.from({ length: 256 }, (_, start) => {
  let row = start;
  for (let k = 0; k < 8; k += 1) row = row & 1 ? 0xedb88320 ^ (row >>> 1) : row >>> 1;
  return row;
});
