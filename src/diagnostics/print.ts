import { type Diagnostic, inOrder } from './diagnostic.js';

/** Longest message, in characters: it may repeat what somebody wrote. */
const LONGEST = 400;
/** At most this many are printed; the rest are counted. */
const MOST = 50;

/**
 * The text an author reads: place, rule, message, the line itself with a caret under the fault, hints.
 *
 * @param sources the text of each file named, by its name; a file not there is printed without its line
 */
export function printDiagnostics(
  diagnostics: readonly Diagnostic[],
  sources: ReadonlyMap<string, string>,
): string {
  const ordered = inOrder(diagnostics);
  const lines = new Map([...sources].map(([file, text]) => [file, text.split(/\r?\n/)]));
  const shown = ordered.slice(0, MOST).map((d) => printOne(d, lines.get(d.file)));
  const rest = ordered.length - shown.length;
  if (rest > 0) shown.push(`… and ${rest} more`);
  return shown.join('\n');
}

function printOne(d: Diagnostic, source: readonly string[] | undefined): string {
  const lines = [
    `${d.file}:${d.start.line}:${d.start.column}: ${d.severity}[${d.rule}] ${shortened(d.message)}`,
  ];
  const text = source?.[d.start.line - 1];
  if (text !== undefined && text.length <= 200) {
    const number = String(d.start.line);
    const indent = text.slice(0, d.start.column - 1).replace(/[^\t]/g, ' ');
    lines.push(`  ${number} | ${text}`);
    lines.push(`  ${' '.repeat(number.length)} | ${indent}${'^'.repeat(Math.max(1, d.length ?? 1))}`);
  }
  for (const hint of d.hints) lines.push(`  hint: ${shortened(hint)}`);
  // A line's end inside one of them would look like a message of its own.
  return lines.map((line) => harmless(line.replaceAll('\n', '\uFFFD'))).join('\n');
}

const shortened = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);

/** Control characters of somebody's file or command could move the cursor or change the terminal. */
export function harmless(text: string): string {
  return text.replace(/[^\P{Cc}\t\n]|[\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
}
