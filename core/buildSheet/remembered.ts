/** The same result for the same key, worked out once. */
export function remembered<T>(): (key: string, work: () => T) => T {
  const known = new Map<string, { readonly made: T }>();
  return (key, work) => {
    const entry = known.get(key) ?? { made: work() };
    known.set(key, entry);
    return entry.made;
  };
}
