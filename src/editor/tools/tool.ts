/**
 * Tools as state machines. A state is a value; `on` answers an event with the next state and with what the editor
 * should show and do. Nothing else changes: what an outcome does not name goes back to rest, so a draft or a guide
 * cannot be left behind.
 */
import type { Point, Site } from '#plan/schema';
import type { EntryOffer, TypedSizes } from '../dimension-entry';
import type { Scene } from '../scene';
import type { EditorState, Modifiers, Overlay, PointerInput, Ref, Step, ToolName, Viewport } from '../types';

export interface ToolPointer extends Modifiers {
  readonly type: 'down' | 'move' | 'up' | 'double';
  /** Plan coordinates, metres. */
  readonly at: Point;
  /** Pixels. */
  readonly screen: Point;
  readonly pointer: PointerInput['pointer'];
  /** Sizes that hold whatever the pointer does. */
  readonly typed: TypedSizes;
}

/**
 * A tool in hand that can have sizes answers the key that begins one with what it offers, and Enter by going on as a
 * release would.
 */
interface ToolKey {
  readonly type: 'key';
  readonly key: string;
}

export type ToolInput = ToolPointer | ToolKey;

export interface Outcome {
  readonly next: ToolState;
  readonly draft?: Site | null;
  readonly overlay?: Partial<Overlay>;
  readonly selection?: readonly Ref[];
  readonly viewport?: Viewport;
  /** Committed, and the draft dropped. */
  readonly step?: Step;
  /** What can be typed meanwhile. */
  readonly entry?: EntryOffer;
  /** Two points that wait for their distance. */
  readonly span?: EditorState['span'];
  /** The tool to go on with. */
  readonly tool?: ToolName;
}

export interface ToolState {
  /** An -ing word, for tests and for reading. */
  readonly name: string;
  /** A gesture is in hand that Escape would drop. */
  readonly busy: boolean;
  /** Null: not for this state, everything stays as it is. */
  on(input: ToolInput, scene: Scene): Outcome | null;
}
