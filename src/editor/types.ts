/** The editor's vocabulary: what a hand can point at, do and see. No DOM; canvas and ui translate events into these. */
import type { PlainMessageKey } from '#i18n/message';
import type { Words } from '#i18n/saying';
import type { ArrowTurn, Opening, Point, Site } from '#plan/schema';
import type { EntryValues, DimensionEntry } from './dimension-entry';

/** One thing on the plan. A probe has no id in the document, so its `id` is its index as text. */
export interface Ref {
  readonly kind: 'loop' | 'lane' | 'mark' | 'steel' | 'path' | 'probe' | 'underlay';
  readonly id: string;
}

export type ToolName =
  | 'select'
  | 'pan'
  | 'rectangle'
  | 'quadrupole'
  | 'diagonal'
  | 'circle'
  | 'polygon'
  | 'lane'
  | 'stop-line'
  | 'steel'
  | 'kerb'
  | 'island'
  | 'arrow'
  | 'gate'
  | 'cover'
  | 'joint'
  | 'pull-box'
  | 'cabinet'
  | 'conduit'
  | 'note'
  | 'dimension'
  | 'path'
  | 'vehicle'
  | 'measure'
  | 'calibrate';

export interface Viewport {
  /** Plan point at the middle of the screen, metres. */
  readonly centre: Point;
  /** Screen pixels per metre. */
  readonly scale: number;
  /** Size of the drawing surface, pixels. */
  readonly width: number;
  readonly height: number;
}

export interface Modifiers {
  readonly shift: boolean;
  readonly alt: boolean;
  readonly control: boolean;
}

/** Pointer events in screen pixels from the surface's upper left corner. */
export type PointerInput = Modifiers & {
  /** 'leave': the pointer went off the surface; a gesture in hand goes on, a hover ends. */
  readonly type: 'down' | 'move' | 'up' | 'cancel' | 'double' | 'leave';
  readonly x: number;
  readonly y: number;
  readonly button: 0 | 1 | 2;
  readonly pointer: 'mouse' | 'pen' | 'touch';
};

/** What the gesture in hand shows on top of the plan; never part of the document. */
export interface Overlay {
  /** Box selection in plan coordinates; `touching` boxes take what they cross. */
  readonly box: { readonly from: Point; readonly to: Point; readonly touching: boolean } | null;
  /** Lines of help: snap guides, the tape, the edge being drawn. */
  readonly guides: readonly { readonly from: Point; readonly to: Point; readonly label: string }[];
  /** Short text beside the pointer: the size while drawing, the angle while turning, what it snapped to. */
  readonly label: { readonly at: Point; readonly text: string } | null;
  /** Thing under the pointer. */
  readonly hover: Ref | null;
  readonly cursor: string;
}

export interface SnapSettings {
  readonly grid: boolean;
  readonly objects: boolean;
  readonly showGrid: boolean;
  /** Metres. */
  readonly gridStep: number;
  /** What counts while `objects` is on. */
  readonly corners: boolean;
  readonly centres: boolean;
  readonly edges: boolean;
  readonly lanes: boolean;
  readonly gaps: boolean;
  /** Pixels within which a mouse or a pen is attracted; a finger reaches further in proportion. */
  readonly tolerance: number;
}

/** What of it is on or off. */
export type SnapSwitch = {
  [Key in keyof SnapSettings]: SnapSettings[Key] extends boolean ? Key : never;
}[keyof SnapSettings];

/** How the tools draw until told otherwise; private to the tab, never in the document. */
export interface DrawingOptions {
  /** Lanes side by side in one go. */
  readonly laneCount: number;
  /** Metres; null: the usual width, or that of the last lane. */
  readonly laneWidth: number | null;
  /** The left half of the lanes runs the other way. */
  readonly lanesOppose: boolean;
  /** The next piece of a lane is an arc that goes on in the direction of the last piece. */
  readonly isArc: boolean;
  /** Metres: between two straight pieces of a lane; 0 leaves a corner. */
  readonly bendRadius: number;
  readonly gate: Opening['kind'];
  readonly arrow: ArrowTurn;
}

export interface EditorState {
  /** The document as committed. */
  readonly site: Site;
  /** The document as the gesture in hand would leave it, or null. */
  readonly draft: Site | null;
  readonly selection: readonly Ref[];
  readonly tool: ToolName;
  /** A gesture is in hand; Escape drops it and nothing else. */
  readonly busy: boolean;
  readonly viewport: Viewport;
  readonly overlay: Overlay;
  readonly snap: SnapSettings;
  /** Names of the steps that undo and redo would take back or repeat. */
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
  /** Counts changes of the document since it was opened, undo and redo included; storage watches it. */
  readonly revision: number;
  /** The vehicle that the vehicle tool places. */
  readonly vehicle: string;
  readonly drawing: DrawingOptions;
  /** The sizes of the gesture in hand that can be typed; null when it has none. */
  readonly entry: DimensionEntry | null;
  /** Two points of a picture that wait for the distance between them. */
  readonly span: { readonly from: Point; readonly to: Point } | null;
  /** What a command has asked the page for: only a page can show files to choose from. */
  readonly asked: 'picture' | 'gap' | 'repeat' | null;
  /** What a command has to say beside what it did; a new object each time. */
  readonly notice: { readonly text: string } | null;
  /** The pointer that the arrow keys move while a tool draws; null while a real one is used. */
  readonly keyboardPoint: Point | null;
  /** Another tab has the site: it can be looked at and copied from. */
  readonly isReadOnly: boolean;
}

/** A named step: the menu says "Undo <label>". */
export interface Step {
  /** In words that are said anew in another language, where they are not a name. */
  readonly label: Words;
  readonly site: Site;
  readonly selection?: readonly Ref[];
  /** Steps in a row with the same key become one step: a held arrow key is undone at once. */
  readonly merge?: string;
}

/** A key press: `key` as the browser names it ("z", "ArrowLeft"); `control` is Command on a Mac. */
export type KeyInput = Modifiers & { readonly key: string };

/** Things on their way to a paste, with the wiring among the loops. */
interface Fragment {
  readonly site: Site;
  readonly refs: readonly Ref[];
  /** Marks of the document that it comes from, where a tail can still lead to. */
  readonly standing: Site['marks'];
}

/** What commands remember from one run to the next; private to the tab, never undone. */
export interface Scratch {
  clipboard: Fragment | null;
  /** How often the clipboard was pasted beside its origin. */
  pastes: number;
  /** The last copies and what they were copied from, so that duplicating again repeats the distance. */
  copied: { readonly from: readonly Ref[]; readonly to: readonly Ref[] } | null;
  /** Where the pointer was last seen over the plan. */
  pointer: Point | null;
}

export interface Editor {
  readonly state: EditorState;
  subscribe(listener: (state: EditorState) => void): () => void;
  /** Replaces the document and clears history and selection. */
  open(site: Site): void;
  /** Commits one step, undoable. Does nothing if the site is the same object. */
  commit(step: Step): void;
  undo(): void;
  redo(): void;
  select(refs: readonly Ref[]): void;
  setTool(tool: ToolName): void;
  setViewport(viewport: Viewport): void;
  setSnap(snap: SnapSettings): void;
  setVehicle(vehicle: string): void;
  setDrawing(options: Partial<DrawingOptions>): void;
  setReadOnly(isReadOnly: boolean): void;
  /** Asks the page for something; the page takes it up and asks for nothing again. */
  ask(what: EditorState['asked']): void;
  /** Tells whoever works here something that the drawing itself does not show. */
  say(text: string): void;
  /** Says the names of the steps again, in another language. */
  retell(): void;
  /** Names of the steps that can be undone, the latest first. */
  undoSteps(): readonly string[];
  /** What a field of the open entry holds, as typed; null lets the pointer have it again. */
  enter(field: keyof EntryValues, text: string | null): void;
  /** Ends the gesture with the sizes as they stand; false if one of them cannot be. */
  commitEntry(): boolean;
  /** Offers a key to the gesture in hand, then to the commands; false if neither wants it. */
  key(input: KeyInput): boolean;
  pointer(input: PointerInput): void;
  /** Zooms about a screen point; factor > 1 comes closer. */
  zoom(factor: number, x: number, y: number): void;
  /** Moves the view by screen pixels. */
  pan(dx: number, dy: number): void;
  /** Shows everything, or the selection. */
  fit(what: 'all' | 'selection'): void;
  /** Escape: drops the gesture, else the tool, else the selection. */
  cancel(): void;
  /** Runs a command of `commands/`; false if it does not apply now. */
  run(command: string): boolean;
  readonly scratch: Scratch;
}

/** The commands that have a name. */
export type CommandId = PlainMessageKey extends infer Key
  ? Key extends `command.${infer Id}`
    ? Id
    : never
  : never;

/** One verb: the menu, the key and the palette all read this object. */
export interface Command {
  /** What it is called stands under `command.<id>` among the messages. */
  readonly id: CommandId;
  /** Keys as "Control+Z", "Shift+ArrowLeft", "Delete"; Control stands for Command on a Mac. */
  readonly keys: readonly string[];
  readonly applies: (state: EditorState) => boolean;
  readonly run: (editor: Editor) => void;
}
