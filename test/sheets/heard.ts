import { withPdf } from '../print/fingerprint.js';

interface Branch {
  readonly role?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly Branch[];
}

/** The text of each page in the order of its tags, as a screen reader says it. */
export async function heard(path: string): Promise<string[]> {
  return withPdf(path, (pdf) =>
    Promise.all(
      Array.from({ length: pdf.numPages }, async (_, index) => {
        const page = await pdf.getPage(index + 1);
        const { items } = await page.getTextContent({ includeMarkedContent: true });
        const texts = new Map<string, string>();
        const open: string[] = [];
        for (const item of items) {
          if ('str' in item) {
            const id = open.findLast((one) => one !== '') ?? '';
            texts.set(id, (texts.get(id) ?? '') + item.str);
          } else if (item.type === 'endMarkedContent') open.pop();
          else open.push(item.id ?? '');
        }
        return saidBy((await page.getStructTree()) as Branch, texts);
      }),
    ),
  );
}

function saidBy(branch: Branch, texts: ReadonlyMap<string, string>): string {
  if (branch.type === 'content') return texts.get(branch.id ?? '') ?? '';
  return (branch.children ?? []).map((child) => saidBy(child, texts)).join('');
}

/** The sizes of all the letters in a PDF, in points, to a twentieth. */
export async function textSizes(path: string): Promise<number[]> {
  return withPdf(path, async (pdf) => {
    const sizes = new Set<number>();
    for (let number = 1; number <= pdf.numPages; number++) {
      const { items } = await (await pdf.getPage(number)).getTextContent();
      for (const item of items)
        if ('str' in item && item.str.trim()) {
          const [a = 0, b = 0] = item.transform as number[];
          sizes.add(Math.round(Math.hypot(a, b) * 20) / 20);
        }
    }
    return [...sizes].sort((x, y) => x - y);
  });
}
