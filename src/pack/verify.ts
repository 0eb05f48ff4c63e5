import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { CommandError } from '../diagnostics/errors.js';
import { differences } from './other-inputs.js';
import { packingListName, shardIn } from './packing-list.js';
import type { PackedDocument, PackingList } from './packing-list-schema.js';
import { readPackingList } from './read-packing-list.js';
import { filesIn, stateOf } from './set-files.js';

/** Something that keeps a set from being whole. */
export interface Finding {
  readonly what: 'missing' | 'altered' | 'extra' | 'shard-missing' | 'other-inputs' | 'no-list';
  /** In the folder; the name of a packing list where it is about a whole shard. */
  readonly file: string;
  /** For a reader: what follows the file's name in a sentence. */
  readonly says: string;
}

/** What a folder was found to hold. */
export interface Verified {
  readonly folder: string;
  readonly whole: boolean;
  readonly shards: number;
  readonly documents: number;
  readonly findings: readonly Finding[];
}

/**
 * Proves that a folder holds a set, whole and unaltered: every document of every shard, byte for byte, made from the
 * same things, and nothing else. Hidden files are nobody's business.
 *
 * @throws {CommandError} there is no such folder; {ContentError} a packing list with faults; {MachineError} a file that
 *   may not be read
 */
export async function verify(folder: string): Promise<Verified> {
  if (!isFolder(folder)) throw new CommandError(`there is no folder ${JSON.stringify(folder)}`);
  const lists = listsIn(folder);
  const [first] = lists;
  if (!first) return { folder, whole: false, shards: 0, documents: 0, findings: [noList(folder)] };
  const mine = lists.filter((one) => one.set === first.set && one.shard.of === first.shard.of);
  const others = lists.filter((one) => !mine.includes(one));
  const documents = mine.flatMap((one) => one.documents);
  const findings = [
    ...missingShards(mine),
    ...mine.slice(1).flatMap((one) => otherInputs(one, first)),
    ...others.flatMap((one) => otherInputs(one, first)),
    ...twice(mine),
    ...(await alteredOf(folder, documents, others)),
    ...extra(folder, documents, lists, others),
  ];
  return {
    folder,
    whole: findings.length === 0,
    shards: mine.length,
    documents: documents.length,
    findings,
  };
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false; // a name that no disk has is one of no folder
  }
}

/** The lists of a folder; those first that most are of one set with. */
function listsIn(folder: string): PackingList[] {
  const faults: Diagnostic[] = [];
  const lists = readdirSync(folder)
    .filter((name) => shardIn(name))
    .flatMap((name) => {
      try {
        return [readPackingList(folder, name)];
      } catch (error) {
        if (!(error instanceof ContentError)) throw error;
        faults.push(...error.diagnostics);
        return [];
      }
    });
  if (faults.length > 0) throw new ContentError(faults);
  const together = (one: PackingList): number =>
    lists.filter(({ set, shard }) => set === one.set && shard.of === one.shard.of).length;
  return lists.sort(
    (a, b) => together(b) - together(a) || a.shard.of - b.shard.of || a.shard.number - b.shard.number,
  );
}

function noList(folder: string): Finding {
  const says = readdirSync(folder).some((name) => name.startsWith('.benchleaf-making-'))
    ? 'is not there yet: a run is at work here, or was ended by force; make the documents again'
    : 'is not there: no set was made here, or its packing list was taken away';
  const inside = readdirSync(folder, { withFileTypes: true })
    .filter((one) => one.isDirectory() && readdirSync(join(folder, one.name)).some(shardIn))
    .map(({ name }) => join(folder, name));
  return {
    what: 'no-list',
    file: packingListName({ number: 1, of: 1 }),
    says: [says, ...inside.map((one) => `look into ${one}`)].join('; '),
  };
}

function missingShards(lists: readonly PackingList[]): Finding[] {
  const of = lists[0]?.shard.of ?? 1;
  const there = new Set(lists.map(({ shard }) => shard.number));
  return Array.from({ length: of }, (_, at) => at + 1)
    .filter((number) => !there.has(number))
    .map((number) => ({
      what: 'shard-missing',
      file: packingListName({ number, of }),
      says: `is missing: make part ${number} of ${of} with --shard ${number}/${of}`,
    }));
}

function otherInputs(list: PackingList, first: PackingList): Finding[] {
  const than = packingListName(first.shard);
  const how = differences(list, first);
  if (how.length === 0) return [];
  return [
    {
      what: 'other-inputs',
      file: packingListName(list.shard),
      says: `was made otherwise than ${than}: ${how.join(', ')}`,
    },
  ];
}

/** A document belongs to one shard. */
function twice(lists: readonly PackingList[]): Finding[] {
  const seen = new Map<string, string>();
  return lists.flatMap((list) =>
    list.documents.flatMap(({ name }): Finding[] => {
      const before = seen.get(name);
      seen.set(name, packingListName(list.shard));
      if (before === undefined) return [];
      return [{ what: 'altered', file: packingListName(list.shard), says: `has ${name}, as ${before} has` }];
    }),
  );
}

async function alteredOf(
  folder: string,
  documents: readonly PackedDocument[],
  others: readonly PackingList[],
): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const { name, size, sha256 } of documents) {
    const state = await stateOf(folder, name, size);
    if (state.problem !== undefined)
      findings.push({ what: state.there ? 'altered' : 'missing', file: name, says: state.problem });
    else if (state.sha256 !== sha256) {
      const whose = others.find((list) =>
        list.documents.some((one) => one.name === name && one.sha256 === state.sha256),
      );
      const says = whose ? `is that of ${packingListName(whose.shard)}` : 'was altered';
      findings.push({ what: 'altered', file: name, says });
    }
  }
  return findings;
}

function extra(
  folder: string,
  documents: readonly PackedDocument[],
  lists: readonly PackingList[],
  others: readonly PackingList[],
): Finding[] {
  const known = new Set([
    ...documents.map(({ name }) => name),
    ...lists.map(({ shard }) => packingListName(shard)),
  ]);
  return filesIn(folder)
    .filter((name) => !known.has(name))
    .map((name) => {
      const whose = others.find((list) => list.documents.some((one) => one.name === name));
      const says = whose
        ? `is of another set, that of ${packingListName(whose.shard)}`
        : 'is not of this set: no packing list here has it';
      return { what: 'extra', file: name, says };
    });
}
