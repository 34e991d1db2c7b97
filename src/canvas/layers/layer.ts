import type { Drawing } from '#scenes/drawing';
import type { Frame } from '#scenes/frame';

/** One canvas of the stack. It is drawn again only when something that it depends on is another object than before. */
export interface LayerDefinition {
  readonly name: string;
  dependsOn(frame: Frame): readonly unknown[];
  draw(frame: Frame): readonly Drawing[];
}

export const hasChanged = (before: readonly unknown[] | null, now: readonly unknown[]): boolean =>
  before === null || before.length !== now.length || now.some((value, index) => value !== before[index]);
