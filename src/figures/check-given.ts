import { z } from 'zod';
import { InputError } from '../diagnostics/errors.js';

/**
 * What a figure was given, checked and with its defaults filled in.
 *
 * @throws {InputError} naming the first value that is missing, unknown or out of range
 */
export function checkGiven(schema: z.ZodObject, given: Record<string, unknown>): Record<string, unknown> {
  const result = schema.safeParse(given);
  if (result.success) return result.data;
  const issue = result.error.issues[0] as z.core.$ZodIssue;
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    throw new InputError(key, given[key], `only ${Object.keys(schema.shape).join(', ')}`);
  }
  const key = String(issue.path[0] ?? 'given');
  // A rule about several values says itself what it accepts; a rule about one is the field's own description.
  const accepts = issue.code === 'custom' ? issue.message : accepted(schema.shape[key]);
  throw new InputError(key, given[key], accepts ?? issue.message);
}

function accepted(field: z.core.$ZodType | undefined): string | undefined {
  if (field instanceof z.ZodDefault || field instanceof z.ZodOptional) return accepted(field.unwrap());
  return field instanceof z.ZodType ? field.description : undefined;
}
