import { crc32, deflateRawSync } from "node:zlib";

/** A packed file with these parts, none of them compressed, in their order. */
export function zipOfParts(parts: Readonly<Record<string, string>>): Uint8Array {
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, text] of Object.entries(parts)) {
    const [content, path] = [Buffer.from(text), Buffer.from(name)];
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt32LE(crc32(content), 10);
    for (const place of [14, 18]) common.writeUInt32LE(content.length, place);
    common.writeUInt16LE(path.length, 22);
    const local = Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), common, path, content]);
    const offset = Buffer.alloc(14);
    offset.writeUInt32LE(at, 10);
    directory.push(Buffer.concat([Buffer.from([0x50, 0x4b, 1, 2, 20, 0]), common, offset, path]));
    locals.push(local);
    at += local.length;
  }
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  for (const place of [8, 10]) end.writeUInt16LE(directory.length, place);
  end.writeUInt32LE(Buffer.concat(directory).length, 12);
  end.writeUInt32LE(at, 16);
  return new Uint8Array(Buffer.concat([...locals, ...directory, end]));
}

/** A packed file with one part; `stated` is the size that its directory says (ZIP application note, 4.3). */
export function zipOf(name: string, content: Uint8Array, stated = content.length): Uint8Array {
  const [packed, path] = [deflateRawSync(content), Buffer.from(name)];
  const common = Buffer.alloc(26);
  common.writeUInt16LE(20, 0);
  common.writeUInt16LE(8, 4);
  common.writeUInt32LE(packed.length, 14);
  common.writeUInt32LE(stated, 18);
  common.writeUInt16LE(path.length, 22);
  const local = Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), common, path, packed]);
  const directory = Buffer.concat([Buffer.from([0x50, 0x4b, 1, 2, 20, 0]), common, Buffer.alloc(14), path]);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  for (const place of [8, 10]) end.writeUInt16LE(1, place);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(local.length, 16);
  return new Uint8Array(Buffer.concat([local, directory, end]));
}
