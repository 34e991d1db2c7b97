/** The editor: one immutable state, changed by gestures, commands and undo, with listeners told once a change. */
import { followRoutes } from '#plan/lead-out';
import type { Point, Site } from '#plan/schema';
import { t } from '#i18n/message';
import { commandForKey, commands } from './commands/index';
import { createEntryDesk } from './entry/desk';
import { entryFor, typedIn } from './entry/typing';
import { boxAround } from './geometry/box';
import {
  NO_HISTORY,
  recorded,
  redoLabel,
  redone,
  sealed,
  undoLabel,
  undoLabels,
  undone,
  type History,
  type Moment
} from './history';
import { createKeyboardHand } from './keyboard-hand';
import { AT_REST, looksSame, overlayOf } from './overlay';
import { pickAt } from './picking';
import { tolerance } from './reach';
import { allRefs, includesRef, sameSelection, stillThere } from './selection';
import { DEFAULT_DRAWING, defaultSnap } from './snap-settings';
import { boxOf } from './things';
import { tools } from './tools/index';
import type { Outcome, ToolInput, ToolPointer, ToolState } from './tools/tool';
import type { Editor, EditorState, PointerInput, Scratch, Step } from './types';
import { DEFAULT_VIEWPORT, fitted, pannedBy, planToScreen, screenToPlan, zoomedAbout } from './viewport';

/** What an empty plan shows: a piece of road, metres. */
const EMPTY_VIEW = boxAround([[-10, -10], [10, 10]])!; // prettier-ignore

/** Tools that change nothing. */
const LOOKING = new Set<EditorState['tool']>(['select', 'pan', 'measure']);
/** Pixels that a mouse may be pushed by accident while the arrow keys move the pointer. */
const JOLT = 4;

const opened = (site: Site): EditorState => ({
  site,
  draft: null,
  selection: [],
  tool: 'select',
  busy: false,
  viewport: DEFAULT_VIEWPORT,
  overlay: AT_REST,
  snap: defaultSnap(site.displayUnits),
  undoLabel: null,
  redoLabel: null,
  revision: 0,
  vehicle: 'car',
  drawing: DEFAULT_DRAWING,
  entry: null,
  span: null,
  asked: null,
  notice: null,
  keyboardPoint: null,
  isReadOnly: false
});

export function createEditor(site: Site): Editor {
  let state = opened(followRoutes(site));
  let history: History = NO_HISTORY;
  let hand: ToolState = tools.select;
  /** Where the pointer of the gesture in hand was last. */
  let last: ToolPointer | null = null;
  /** A button is down, or a finger: the arrow keys cannot take over meanwhile. */
  let isPressed = false;
  /** Where the mouse lay when the arrow keys took over. */
  let resting: Point | null = null;
  const listeners = new Set<(state: EditorState) => void>();
  const scratch: Scratch = { clipboard: null, pastes: 0, copied: null, pointer: null };

  function update(patch: Partial<EditorState>): void {
    const changes = Object.entries(patch).some(([key, value]) => state[key as keyof EditorState] !== value);
    if (!changes) return;
    state = { ...state, ...patch };
    for (const listener of [...listeners]) listener(state);
  }

  /** The fields that follow from a changed document. */
  function afterChange({ site: next, selection }: Moment): Partial<EditorState> {
    const switched = next.displayUnits !== state.site.displayUnits;
    const gridStep = defaultSnap(next.displayUnits).gridStep;
    return {
      site: next,
      selection: stillThere(next, selection),
      revision: state.revision + 1,
      undoLabel: undoLabel(history),
      redoLabel: redoLabel(history),
      ...(switched ? { snap: { ...state.snap, gridStep } } : {})
    };
  }

  /** Lengths that are drawn follow the drawing, whatever changed it; `followRoutes` leaves all others alone. */
  function record({ label, site: changed, selection, merge }: Step): Partial<EditorState> {
    const next = followRoutes(changed);
    if (next === state.site) return selection ? { selection: stillThere(next, selection) } : {};
    const before: Moment = { site: state.site, selection: state.selection };
    const after: Moment = { site: next, selection: stillThere(next, selection ?? state.selection) };
    history = recorded(history, { label, before, after, merge });
    return afterChange(after);
  }

  function chosen(selection: EditorState['selection']): Partial<EditorState> {
    if (sameSelection(selection, state.selection)) return {};
    history = sealed(history);
    return { selection };
  }

  /** What an outcome does not name goes back to rest. */
  function apply(outcome: Outcome): void {
    hand = outcome.tool ? tools[outcome.tool] : outcome.next;
    const offer = hand.busy ? outcome.entry : undefined;
    const by = state.keyboardPoint ? 'keys' : (last?.pointer ?? 'mouse');
    const overlay = overlayOf(outcome.overlay);
    update({
      draft: outcome.draft && outcome.draft !== state.site ? followRoutes(outcome.draft) : null,
      overlay: looksSame(overlay, state.overlay) ? state.overlay : overlay,
      busy: hand.busy,
      span: outcome.span ?? null,
      entry: offer && last ? entryFor(offer, state.entry, last.at, by) : null,
      ...(outcome.selection ? chosen(outcome.selection) : {}),
      ...(outcome.viewport ? { viewport: outcome.viewport } : {}),
      ...(outcome.tool ? { tool: outcome.tool, keyboardPoint: null } : {}),
      ...(outcome.step && !state.isReadOnly ? record(outcome.step) : {})
    });
  }

  /** Whether the tool wanted the event. */
  function offer(input: ToolInput): boolean {
    const outcome = hand.on(input, state);
    if (outcome) apply(outcome);
    return outcome !== null;
  }

  const rest = (): Partial<EditorState> => ({
    draft: null,
    overlay: AT_REST,
    busy: false,
    span: null,
    entry: null
  });

  function dropGesture(): void {
    hand = tools[state.tool];
    update(rest());
  }

  function go(to: ReturnType<typeof undone>): void {
    if (!to || state.isReadOnly) return;
    hand = tools[state.tool];
    history = to.history;
    update({ ...rest(), ...afterChange(to.moment) });
  }

  /** A context menu speaks about what it was opened on. */
  function selectForMenu(at: Point, { pointer }: PointerInput): void {
    if (hand.busy) return;
    const pick = pickAt(state.site, at, tolerance(pointer, state.viewport));
    if (!pick || !includesRef(state.selection, pick.ref)) editor.select(pick ? [pick.ref] : []);
  }

  /** A pointer with its place on the plan, from a hand or from the arrow keys. */
  function send(input: Omit<ToolPointer, 'typed'>): void {
    scratch.pointer = input.at;
    if (state.isReadOnly && !LOOKING.has(state.tool)) {
      update({
        overlay: overlayOf({ label: { at: input.at, text: t('entry.readOnly') }, cursor: 'not-allowed' })
      });
      return;
    }
    last = { ...input, typed: typedIn(state.entry) };
    offer(last);
  }

  /** Whether the arrow keys move the pointer and the mouse has not been taken up again. */
  function isOnlyJolted({ type, x, y }: PointerInput): boolean {
    if (!state.keyboardPoint) return false;
    resting ??= [x, y];
    return type !== 'down' && Math.hypot(x - resting[0], y - resting[1]) < JOLT;
  }

  function point(input: PointerInput): void {
    if (input.type !== 'move' && input.type !== 'leave')
      isPressed = input.type === 'down' && input.button === 0;
    if (input.type === 'cancel') return dropGesture();
    if (isOnlyJolted(input)) return;
    if (input.type === 'leave') {
      scratch.pointer = null;
      if (!hand.busy) update(rest());
      return;
    }
    update({ keyboardPoint: null });
    const at = screenToPlan(state.viewport, [input.x, input.y]);
    scratch.pointer = at;
    if (input.button === 2 && input.type === 'down') return selectForMenu(at, input);
    if (input.button !== 0) return;
    send({ ...input, type: input.type, at, screen: [input.x, input.y] });
  }

  /** Shows the gesture in hand again: with other sizes, or other options of its tool. */
  function repeat(): void {
    if (last && hand.busy) offer((last = { ...last, type: 'move', typed: typedIn(state.entry) }));
  }

  const desk = createEntryDesk({
    state: () => state,
    show: (entry) => update({ entry }),
    repeat,
    offer: (key) => offer({ type: 'key', key })
  });

  const keyboard = createKeyboardHand({
    state: () => state,
    place(keyboardPoint) {
      if (!state.keyboardPoint) resting = null;
      update({ keyboardPoint });
    },
    send(type, at, alt) {
      const screen = planToScreen(state.viewport, at);
      send({ type, at, screen, pointer: 'mouse', shift: false, control: false, alt });
    },
    centre: (at) => update({ viewport: { ...state.viewport, centre: at } })
  });

  const editor: Editor = {
    get state() {
      return state;
    },
    scratch,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    open(next) {
      history = NO_HISTORY;
      hand = tools.select;
      Object.assign(scratch, { copied: null, pastes: 0 });
      const { viewport, vehicle, drawing, isReadOnly } = state;
      const snap = { ...state.snap, gridStep: defaultSnap(next.displayUnits).gridStep };
      update({ ...opened(followRoutes(next)), viewport, vehicle, drawing, isReadOnly, snap });
    },
    commit(step) {
      if (step.site === state.site) return;
      if (state.isReadOnly) return editor.say(t('entry.readOnly'));
      hand = tools[state.tool];
      update({ ...rest(), ...record(step) });
    },
    undo() {
      // In the middle of a gesture the gesture is what is taken back, point by point where it has points.
      if (!hand.busy) go(undone(history));
      else if (!offer({ type: 'key', key: 'Backspace' })) dropGesture();
    },
    redo() {
      if (!hand.busy) go(redone(history));
    },
    select(refs) {
      update(chosen(stillThere(state.site, refs)));
    },
    setTool(tool) {
      hand = tools[tool];
      update({ ...rest(), tool, keyboardPoint: null });
    },
    setViewport: (viewport) => update({ viewport }),
    setSnap: (snap) => update({ snap }),
    setVehicle: (vehicle) => update({ vehicle }),
    setDrawing(options) {
      update({ drawing: { ...state.drawing, ...options } });
      repeat();
    },
    ask: (asked) => update({ asked }),
    say: (text) => update({ notice: { text } }),
    retell: () => update({ undoLabel: undoLabel(history), redoLabel: redoLabel(history) }),
    undoSteps: () => undoLabels(history),
    setReadOnly(isReadOnly) {
      // What was in hand cannot be kept any more; it must not go on when the site comes back either.
      if (isReadOnly) hand = tools[state.tool];
      update({ isReadOnly, ...(isReadOnly ? rest() : {}) });
    },
    enter: (field, text) => desk.enter(field, text),
    commitEntry: () => desk.commit(),
    key(input) {
      if (desk.key(input) || (!isPressed && keyboard.key(input))) return true;
      if (!input.control && offer({ type: 'key', key: input.key })) return true;
      const command = commandForKey(input);
      return command !== null && editor.run(command.id);
    },
    pointer: point,
    zoom: (factor, x, y) => update({ viewport: zoomedAbout(state.viewport, factor, [x, y]) }),
    pan: (dx, dy) => update({ viewport: pannedBy(state.viewport, dx, dy) }),
    fit(what) {
      const box = boxOf(state.site, what === 'all' ? allRefs(state.site) : state.selection);
      if (box || what === 'all') update({ viewport: fitted(state.viewport, box ?? EMPTY_VIEW) });
    },
    cancel() {
      if (hand.busy) return dropGesture();
      if (state.tool !== 'select') return editor.setTool('select');
      editor.select([]);
    },
    run(id) {
      const command = commands.find((each) => each.id === id);
      if (!command?.applies(state)) return false;
      command.run(editor);
      return true;
    }
  };
  return editor;
}
