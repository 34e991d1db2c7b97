/** What was done last by way of the palette, in this tab. */
const MOST = 8;

let used: readonly string[] = [];

export const recentlyUsed = (): readonly string[] => used;

export function remember(id: string): void {
  used = [id, ...used.filter((each) => each !== id)].slice(0, MOST);
}
