/** Whether two pieces of a document say the same; what they share is not looked at twice, and an absent field equals undefined. */
export function isAlike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b))
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((each, index) => isAlike(each, b[index]))
    );
  const one = a as Readonly<Record<string, unknown>>;
  const other = b as Readonly<Record<string, unknown>>;
  return (
    Object.keys(one).every((key) => isAlike(one[key], other[key])) &&
    Object.keys(other).every((key) => key in one || other[key] === undefined)
  );
}
