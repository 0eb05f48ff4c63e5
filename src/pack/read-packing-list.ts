import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { ContentError, type Diagnostic, type Position } from '../diagnostics/diagnostic.js';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import { faultInJson } from './json-fault.js';
import { placeInJson, positionOf } from './json-place.js';
import { sealOf, shardIn } from './packing-list.js';
import { type PackingList, packingListSchema } from './packing-list-schema.js';

/** A list of forty thousand documents has some eight million bytes. */
const LARGEST = 64 << 20;
/** What comes of one slip of a hand is told, and no more. */
const MOST_FAULTS = 5;
const TOP: Position = { line: 1, column: 1 };
const EDITED =
  'A packing list is written by benchleaf make, and not to be changed. Make the documents again.';

/**
 * Reads a packing list and checks it, the seal too.
 *
 * @param name of the file in the folder
 * @throws {ContentError} with its faults and their places; {MachineError} it may not be read
 */
export function readPackingList(folder: string, name: string): PackingList {
  const file = join(folder, name);
  const fail = (rule: string, message: string, start: Position, length = 1): never => {
    throw new ContentError([fault(file, rule, message, start, length)]);
  };
  const text = bytesOf(file, fail).toString('utf8');
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    fail('json', 'this is not JSON from here on', positionOf(text, faultInJson(text)));
  }
  const read = packingListSchema.safeParse(data);
  if (!read.success)
    throw new ContentError(
      read.error.issues
        .slice(0, MOST_FAULTS)
        .map((issue) => fault(file, 'value', wordsOf(issue), placeInJson(text, pathOf(issue)))),
    );
  const list = read.data;
  const called = shardIn(name);
  const at = (...path: PropertyKey[]): Position => placeInJson(text, path);
  if (called?.number !== list.shard.number || called.of !== list.shard.of)
    fail('name', `this is the list of part ${list.shard.number} of ${list.shard.of}`, at('shard'));
  const names = new Set<string>();
  for (const [index, { name: one }] of list.documents.entries()) {
    if (names.has(one.toLowerCase()))
      fail('twice', `${JSON.stringify(one)} is there twice`, at('documents', index, 'name'));
    names.add(one.toLowerCase());
  }
  if (sealOf(list) !== list.seal) fail('seal', 'the list was changed after it was written', at('seal'));
  return list;
}

/** Of a file; what is something else, such as a pipe, is not opened. */
function bytesOf(file: string, fail: (rule: string, message: string, start: Position) => never): Buffer {
  try {
    const about = statSync(file);
    if (!about.isFile()) fail('file', 'this is no file', TOP);
    if (about.size > LARGEST) fail('too-long', `the file is larger than ${LARGEST >> 20} MB`, TOP);
    return readFileSync(file);
  } catch (error) {
    if (error instanceof ContentError) throw error;
    throw new MachineError(`cannot read ${file}: ${because(error)}`);
  }
}

function fault(file: string, rule: string, message: string, start: Position, length = 1): Diagnostic {
  return { severity: 'error', rule: `packing-list/${rule}`, message, file, start, length, hints: [EDITED] };
}

function pathOf(issue: z.core.$ZodIssue): PropertyKey[] {
  return issue.code === 'unrecognized_keys' ? [...issue.path, issue.keys[0] ?? ''] : issue.path;
}

function wordsOf(issue: z.core.$ZodIssue): string {
  const where = issue.path.map(String).join('.');
  return `${where}${where && ': '}${issue.message.replace(/^./, (first) => first.toLowerCase())}`;
}
