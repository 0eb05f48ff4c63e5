/** What no name has that Benchleaf gives: a backslash or colon leads elsewhere on some machines. */
const NEVER = /[\\:\p{Cc}]/u;
const LONGEST = 300;

/** Whether a name from a file leads to something inside the folder that it is for, and is a name we would give. */
export function isSafeName(name: string): boolean {
  return (
    name.length <= LONGEST &&
    !NEVER.test(name) &&
    name.split('/').every((part) => part !== '' && !part.startsWith('.'))
  );
}
