/** Names for the items of a list that stay the same from answer to answer, also when the server repeats a key. */
export function numbered<T>(items: T[], keyOf: (item: T) => string): { name: string; item: T }[] {
  const seen = new Map<string, number>();
  return items.map((item) => {
    const key = keyOf(item);
    const count = (seen.get(key) ?? 0) + 1;
    seen.set(key, count);
    return { name: count === 1 ? key : `${key} ${count}`, item };
  });
}
