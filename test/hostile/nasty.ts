/** A file that somebody might send to do harm, or that a broken program might write. */
export interface Nasty {
  /** What is nasty about it. */
  readonly name: string;
  readonly kind: 'lesson' | 'kit' | 'course' | 'list';
  /** Made when it is wanted: some are large. */
  content(): string | Uint8Array;
  /**
   * Where it may lead: `told`, a located message; `safe`, a page in which it stands as text or not at all; either
   * where which of the two it is says nothing.
   */
  readonly ends: 'told' | 'safe' | 'either';
  /** What the message says, where that matters. */
  readonly says?: RegExp;
}

/** Several of one kind that end in one way. */
export function nasties(
  kind: Nasty['kind'],
  ends: Nasty['ends'],
  table: Readonly<Record<string, string | Uint8Array | (() => string | Uint8Array)>>,
): Nasty[] {
  return Object.entries(table).map(([name, content]) => ({
    name,
    kind,
    ends,
    content: typeof content === 'function' ? content : () => content,
  }));
}

/** Names that every object of JavaScript answers to. */
export const PROTOTYPE_NAMES = ['__proto__', 'constructor', 'hasOwnProperty', 'toString', 'valueOf'];

/** Texts that would be markup, style or script, if anything let them. */
export const SMUGGLED = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '</style><style>*{display:none}</style>',
  '<svg onload=alert(1)><foreignObject><iframe src=file:///etc/passwd></iframe></foreignObject></svg>',
  '"><object data=data:text/html,x></object>',
  '"; } body { background: url(http://127.0.0.1/x) } a::after { content: "',
  '</title><base href=http://127.0.0.1/>',
  '&lt;script&gt;&#60;b&#62;',
];

/** Asks the kit for its head. */
const WORKS = `    works:
      half: { formula: teeth / 2, check: half * 2 = teeth }
      indexing: { calculation: dividing.simple, divisions: teeth }
`;

/** A lesson in which one thing is other than it should be. */
export function lesson({
  head = '',
  problem = '',
  problems = `problems:\n  one:\n    vary: { teeth: 48..96 by 4 }\n${WORKS}    find: half\n    ask: What is half of {{teeth}}?\n${problem}`,
  body = 'Some text.\n\n{{problems}}\n',
  title = 'title: Nasty\n',
}: Partial<Record<'head' | 'problem' | 'problems' | 'body' | 'title', string>> = {}): string {
  return `---\n${title}${head}${problems}---\n\n${body}`;
}

/** A kit with more in it. */
export const kit = (more: string, name = 'Nasty kit'): string => `kit: ${name}\nunits: mm\n${more}`;

/** A course of one lesson that comes with the program. */
export const course = (more: string, path = '../lessons/kits/harrow-lane.yaml'): string =>
  `course: Nasty\nclub: Nobody\nkit: ${path}\n${more || 'lessons: [01-small]\n'}`;
