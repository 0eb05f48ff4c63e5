import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Printer } from '../../src/print/printer.js';
import { drawnBoxes } from './drawn-boxes.js';
import { type Fingerprint, fingerprint } from './fingerprint.js';
import { page, workFolder } from './sample-page.js';

let work: string;
let printer: Printer;

beforeAll(async () => {
  work = await workFolder();
  printer = await Printer.open({ workFolder: work });
});

afterAll(async () => {
  await printer.close();
  await rm(work, { recursive: true });
});

async function printed(html: string): Promise<Fingerprint> {
  const to = join(work, 'printed.pdf');
  await printer.print({ html, to });
  return fingerprint(to);
}

describe('print({ html, to })', () => {
  it('takes the paper from @page', async () => {
    expect((await printed(page('<p>text</p>'))).sizes).toEqual(['209.9 × 297.0']);
    expect((await printed(page('<p>text</p>', '@page { size: letter }'))).sizes).toEqual(['215.9 × 279.4']);
  });

  it('turns a page where @page says so', async () => {
    const css = '@page wide { size: A4 landscape } section { page: wide }';
    const { sizes } = await printed(page('<p>upright</p><section>on its side</section>', css));
    expect(sizes).toEqual(['209.9 × 297.0', '297.0 × 209.9']);
  });

  it('gives a tagged document with title, language and outline', async () => {
    const body = '<h1>Wheels</h1><h2>Blanks</h2><h2>Depth</h2><h1>Pinions</h1>';
    expect(await printed(page(body))).toMatchObject({
      tagged: true,
      title: 'Wheel blanks',
      language: 'en-GB',
      outline: ['Wheels', '  Blanks', '  Depth', 'Pinions'],
    });
  });

  it('embeds the font of the work folder, and no other', async () => {
    const { fonts, text } = await printed(page('<p>Sixty teeth</p>'));
    expect(fonts).toEqual(['SourceSerif4-Regular']);
    expect(text).toEqual(['Sixty teeth']);
  });

  it('waits for a font that is used only in print', async () => {
    const { fonts } = await printed(page('<p>Sixty</p>', '@media print { p { font-family: Heads } }'));
    expect(fonts.join()).toMatch(/^SourceSans3/);
  });

  it('waits for a font that is used only in the page margin', async () => {
    const css = '@page { @bottom-center { content: "page " counter(page); font-family: Heads } }';
    const { fonts, text } = await printed(page('<p>Sixty</p>', css));
    expect(fonts).toHaveLength(2);
    expect(fonts.join()).toMatch(/SourceSans3\S*,SourceSerif4-Regular/);
    expect(text[0]).toContain('page 1');
  });

  it('prints 100 mm as 100 mm, across and down', async () => {
    const square =
      '<rect x="5" y="5" width="100" height="100" fill="none" stroke="#000" stroke-width="0.35"/>';
    const to = join(work, 'scale.pdf');
    await printer.print({
      html: page(`<svg width="110mm" height="110mm" viewBox="0 0 110 110">${square}</svg>`),
      to,
    });
    const [box] = await drawnBoxes(to);
    expect(box?.ink).toBe('stroke #000000');
    expect(Math.abs((box?.width ?? 0) - 100)).toBeLessThan(0.05);
    expect(Math.abs((box?.height ?? 0) - 100)).toBeLessThan(0.05);
  });

  it('keeps backgrounds', async () => {
    const to = join(work, 'background.pdf');
    await printer.print({
      html: page('<div style="width: 50mm; height: 30mm; background: #000"></div>'),
      to,
    });
    expect(await drawnBoxes(to)).toContainEqual({
      width: expect.closeTo(50, 0), // boxes of CSS, unlike drawings, go to the nearest pixel
      height: expect.closeTo(30, 0),
      ink: 'fill #000000',
    });
  });

  it('runs no script', async () => {
    const { text } = await printed(
      page('<p id="p">as written</p><script>p.textContent = "changed"</script>'),
    );
    expect(text).toEqual(['as written']);
  });

  it('counts the pages', async () => {
    const html = page('<p style="break-after: page">text</p>'.repeat(23));
    const to = join(work, 'count.pdf');
    const { pages, bytes } = await printer.print({ html, to });
    expect(pages).toBe((await fingerprint(to)).pages);
    expect(pages).toBeGreaterThan(20);
    expect(bytes).toBeGreaterThan(1000);
  });
});

describe('printAll(jobs)', () => {
  it('prints all, reports each as it is done, and answers in the order of the jobs', async () => {
    const lengths = [9, 1, 1, 5, 1, 2, 1];
    const jobs = lengths.map((n, index) => ({
      html: page('<p>text</p>' + '<p style="break-before: page">text</p>'.repeat(n - 1)),
      to: join(work, `all-${index}.pdf`),
    }));
    const done: string[] = [];
    const results = await printer.printAll(jobs, ({ to }) => done.push(to));
    expect(results.map(({ to, pages }) => ({ to, pages }))).toEqual(
      jobs.map(({ to }, index) => ({ to, pages: lengths[index] })),
    );
    expect(done.sort()).toEqual(jobs.map(({ to }) => to));
  });

  it('draws jobs one by one, and no more after a failure', async () => {
    let drawn = 0;
    async function* jobs() {
      for (;;) {
        drawn += 1;
        yield {
          html: page(drawn === 3 ? '<img src="none.png">' : 'text'),
          to: join(work, `drawn-${drawn}.pdf`),
        };
      }
    }
    await expect(printer.printAll(jobs())).rejects.toThrow(/drawn-3\.pdf cannot be printed: none\.png/);
    expect(drawn).toBeLessThan(10);
  });
});
