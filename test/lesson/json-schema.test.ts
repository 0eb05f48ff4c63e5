import { expect, it } from 'vitest';
import { lessonJsonSchema } from '../../src/lesson/schema.js';

it('the JSON Schema beside the lessons is the one of the reader', async () => {
  await expect(`${JSON.stringify(lessonJsonSchema(), null, 2)}\n`).toMatchFileSnapshot(
    '../../lessons/lesson.schema.json',
  );
});
