/** Keys of the page: which presses go to the editor, and how a key is written for people. */
import { commandForKey, commands } from '#editor/commands/index';
import { t, type PlainMessageKey } from '#i18n/message';
import type { Command, KeyInput, ToolName } from '#editor/types';

const byId = new Map<string, Command>(commands.map((command) => [command.id, command]));

export const commandOf = (id: string): Command | undefined => byId.get(id);

export const commandLabel = ({ id }: Command): string => t(`command.${id}`);

export const keysOfTool = (tool: ToolName): string | undefined => byId.get(`tool-${tool}`)?.keys[0];

const ARROWS: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓'
};

/** Keys whose name on a keyboard depends on the language. */
const NAMED: Readonly<Record<string, PlainMessageKey>> = {
  Control: 'key.control',
  Shift: 'key.shift',
  Escape: 'key.escape',
  Delete: 'key.delete',
  Backspace: 'key.backspace'
};

function written(key: string): string {
  const name = NAMED[key];
  return name === undefined ? (ARROWS[key] ?? key) : t(name);
}

/** "Control+Shift+Z" as its keys; a plus sign itself is a key too. */
export const writtenKeys = (keys: string): readonly string[] => keys.split(/(?<=\w)\+/).map(written);

/** The element that a press was aimed at, as much of it as matters here. */
export interface KeyTarget {
  readonly tagName: string;
  readonly type?: string;
  readonly isContentEditable?: boolean;
}

const TEXT_FIELDS = new Set(['text', 'search', 'number', 'email', 'url', 'tel', 'password']);

function isTyping({ tagName, type, isContentEditable }: KeyTarget): boolean {
  if (isContentEditable || tagName === 'TEXTAREA') return true;
  return tagName === 'INPUT' && TEXT_FIELDS.has(type ?? 'text');
}

const UNDO_KEYS = new Set(['z', 'y']);
/** Keys that work a control when it has the focus. */
const CONTROL_KEYS: Readonly<Record<string, ReadonlySet<string>>> = {
  BUTTON: new Set(['Enter', ' ']),
  A: new Set(['Enter']),
  SUMMARY: new Set(['Enter', ' ']),
  INPUT: new Set([' ', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'])
};

/**
 * Whether a press may be a command of the drawing. A field keeps everything but undo and redo, which it has already kept
 * for itself if it has typing of its own; a list keeps all its letters.
 */
export function belongsToDrawing(
  { key, control }: Pick<KeyInput, 'key' | 'control'>,
  target: KeyTarget
): boolean {
  if (isTyping(target) || target.tagName === 'SELECT') return control && UNDO_KEYS.has(key.toLowerCase());
  return control || !(CONTROL_KEYS[target.tagName]?.has(key) ?? false);
}

/**
 * Whether a press is kept from the browser even while the drawing has no use for it: a key that sometimes marks all things
 * must not at other times mark all text of the page, nor put it among the bookmarks. In fields and lists the browser's own
 * meaning stands.
 */
export const isKeptFromBrowser = (input: KeyInput, target: KeyTarget): boolean =>
  input.control && !isTyping(target) && target.tagName !== 'SELECT' && commandForKey(input) !== null;
