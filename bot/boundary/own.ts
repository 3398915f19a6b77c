/** What a table says of a word people typed, which may be the name of something every object has. */
export const own = <T>(record: Readonly<Record<string, T>>, key: string): T | null => (Object.hasOwn(record, key) ? (record[key] ?? null) : null);
