/**
 * A map that forgets what was not asked for lately: two generations, the older one is dropped when the younger is full.
 * A drag makes a new key every frame; this keeps the last few thousand and no more.
 */
export class RecentCache<K, V> {
  private young = new Map<K, V>();
  private old = new Map<K, V>();

  constructor(private readonly size: number) {}

  get(key: K, make: () => V): V {
    const known = this.young.get(key) ?? this.old.get(key);
    const value = known ?? make();
    if (!this.young.has(key)) {
      if (this.young.size >= this.size) {
        this.old = this.young;
        this.young = new Map();
      }
      this.young.set(key, value);
    }
    return value;
  }

  /** What is kept, or undefined; asking does not count as using. */
  peek(key: K): V | undefined {
    return this.young.get(key) ?? this.old.get(key);
  }

  has(key: K): boolean {
    return this.young.has(key) || this.old.has(key);
  }
}
