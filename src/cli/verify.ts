import type { Command } from 'commander';
import { ReportedError } from '../diagnostics/errors.js';
import type { Verified } from '../pack/verify.js';
import { counted } from '../units/words.js';

/** Adds the command that proves a set. */
export function addVerify(benchleaf: Command, out: (text: string) => void): void {
  benchleaf
    .command('verify')
    .description('prove that a folder holds all that was made, unaltered, and nothing else')
    .argument('<folder>', 'of a course, such as out/larkfield')
    .option('--json', 'print data instead of text')
    .addHelpText('after', '\nExamples:\n  benchleaf verify out/larkfield')
    .action(async (folder: string, options: { json?: true }) => {
      const { verify } = await import('../pack/verify.js');
      const verified = await verify(folder);
      out(options.json ? `${JSON.stringify(verified, null, 2)}\n` : verifiedText(verified));
      if (!verified.whole) throw new ReportedError(`${folder} does not hold a whole set, unaltered`, 1);
    });
}

/** What was found, for a person. */
function verifiedText({ folder, whole, shards, documents, findings }: Verified): string {
  const lines = findings.map(({ file, says }) => `${file} ${says}\n`);
  const parts = shards > 1 ? ` in ${shards} parts` : '';
  return whole
    ? `${folder}: ${counted(documents, 'document')}${parts}, complete and unaltered\n`
    : // A control character in a name could do anything on a terminal.
      lines.join('').replace(/[^\P{Cc}\n]/gu, '\uFFFD');
}
