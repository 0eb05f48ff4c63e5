import { ContentError } from '../diagnostics/diagnostic.js';

/** A lesson's file in its two parts. */
export interface LessonText {
  readonly yaml: string;
  /** Line of the file on which the YAML starts. */
  readonly yamlLine: number;
  readonly body: string;
  readonly bodyLine: number;
}

/**
 * Parts the front matter, between two lines of `---`, from the body.
 *
 * @throws {ContentError} when there is none, or it does not end
 */
export function partLesson(text: string, file: string): LessonText {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  const wrong = (message: string, line: number, hint: string) =>
    new ContentError([
      {
        severity: 'error',
        rule: 'lesson/front-matter',
        message,
        file,
        start: { line, column: 1 },
        hints: [hint],
      },
    ]);
  if (lines[0]?.trimEnd() !== '---')
    throw wrong(
      'a lesson starts with front matter',
      1,
      'Write --- on the first line, then title: and the rest.',
    );
  const end = lines.findIndex((line, at) => at > 0 && line.trimEnd() === '---');
  if (end < 0) throw wrong('the front matter does not end', 1, 'Write --- on a line of its own after it.');
  return {
    yaml: `${lines.slice(1, end).join('\n')}\n`,
    yamlLine: 2,
    body: lines.slice(end + 1).join('\n'),
    bodyLine: end + 2,
  };
}
