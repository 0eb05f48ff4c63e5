import { type Nasty, nasties, PROTOTYPE_NAMES, SMUGGLED } from '../nasty.js';

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export const listNasties: Nasty[] = [
  ...nasties('list', 'told', {
    'a million rows': () => `name\n${'a\n'.repeat(1_000_000)}`,
    'all the rows that fit into the size': () => `name\n${'a\n'.repeat(490_000)}`,
    'a name of a hundred thousand letters': () => `name\n${'a'.repeat(100_000)}\n`,
    'two hundred thousand columns': () => `name${',x'.repeat(200_000)}\nAda\n`,
    'two hundred thousand columns of units': () =>
      `name${','.repeat(200_000)}\nAda${',mm'.repeat(200_000)}\n`,
    'two hundred thousand columns called name': () => `${'name,'.repeat(190_000)}\nAda\n`,
    'quotation marks only': () => '"'.repeat(900_000),
    'quotation marks and commas': () => 'name\n' + '",'.repeat(400_000),
    'a stray mark on each line': () => `name\n${'a"b\n'.repeat(200_000)}`,
    'a mark that does not close': () => `name\n"${'a\n'.repeat(400_000)}`,
    'spaces only': () => ' '.repeat(900_000),
    'commas only': () => ','.repeat(900_000),
    'line ends only': () => '\n'.repeat(900_000),
    NULs: 'name\nA\0da\n',
    'escapes of a terminal': 'name\n\u001B[2J\u001B]0;owned\u0007\n',
    'letters turned round': 'name\nAda \u202Egnp.exe\n',
    'a tower of accents': () => `name\na${'\u0301'.repeat(200)}\n`,
    'no text at all': () => new Uint8Array(3000).map((_, at) => (at * 7919) % 256),
    'nothing at all': '',
    'half a character': () => new Uint8Array([...Buffer.from('name\nAda'), 0xed, 0xa0, 0x80]),
    'a seat of a thousand letters': () => `name,seat\nAda,${'1'.repeat(1000)}\n`,
    'ten thousand wrong sizes of print': () => `name,print\n${'Ada,huge\n'.repeat(9_999)}`,
  }),
  ...nasties('list', 'safe', {
    'a mark of byte order': '\uFEFFname\nAda\n',
    'markup in every cell': () =>
      `name,seat\n${SMUGGLED.filter((text) => text.length <= 80)
        .map((text, at) => `${quoted(text)},<b>${at}`)
        .join('\n')}\n`,
    'formulas of a spreadsheet': 'name\n=1+1\n"=cmd|\' /C calc\'!A0"\n@SUM(A1)\n+1\n-1\n',
    'names that climb': 'name\n../../etc/passwd\n..\\..\\boot.ini\n/etc/passwd\nC:\\x\n~\n.\n..\n',
    'names of Windows devices': 'name\nCON\nnul\nAUX\nCOM1.txt\nLPT9\n',
    'names of JavaScript': `name\n${PROTOTYPE_NAMES.join('\n')}\n`,
    'names of style': 'name\n*/ } body { display: none }\n\\22; }\n\\27\n',
    'names in braces': 'name\n{{constructor}}\n{{#each this}}\n$\\rule{9km}{9km}$\n',
    'one name twenty times': () => `name\n${'Ada\n'.repeat(20)}`,
  }),
];
