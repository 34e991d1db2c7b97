import { describe, expect, test } from 'vitest';
import { belongsToDrawing, isKeptFromBrowser, keysOfTool, writtenKeys } from '#ui/keys';

const press = (key: string, control = false) => ({ key, control });
const field = { tagName: 'INPUT', type: 'text' };
const button = { tagName: 'BUTTON', type: 'button' };

describe('which presses reach the drawing', () => {
  test.each(['r', 'Delete', 'ArrowUp', 'Escape', '2'])('%s does not, out of a text field', (key) => {
    expect(belongsToDrawing(press(key), field)).toBe(false);
  });

  test.each(['z', 'Z', 'y'])('Control+%s does, out of a field that let it pass', (key) => {
    expect(belongsToDrawing(press(key, true), field)).toBe(true);
  });

  test('copy and paste stay with the field', () => {
    for (const key of ['c', 'v', 'x', 'a']) expect(belongsToDrawing(press(key, true), field)).toBe(false);
  });

  test('a list keeps the letters that choose in it', () => {
    expect(belongsToDrawing(press('c'), { tagName: 'SELECT' })).toBe(false);
  });

  test('a button keeps what presses it, and nothing else', () => {
    expect(belongsToDrawing(press('Enter'), button)).toBe(false);
    expect(belongsToDrawing(press(' '), button)).toBe(false);
    expect(belongsToDrawing(press('r'), button)).toBe(true);
    expect(belongsToDrawing(press('ArrowLeft'), button)).toBe(true);
  });

  test('a switch keeps the arrows that move it', () => {
    expect(belongsToDrawing(press('ArrowLeft'), { tagName: 'INPUT', type: 'radio' })).toBe(false);
    expect(belongsToDrawing(press('Delete'), { tagName: 'INPUT', type: 'radio' })).toBe(true);
  });

  test('text that is edited in place counts as a field', () => {
    expect(belongsToDrawing(press('r'), { tagName: 'DIV', isContentEditable: true })).toBe(false);
  });
});

describe('which presses are kept from the browser though nothing comes of them', () => {
  const canvas = { tagName: 'DIV' };
  const held = (key: string, shift = false) => ({ key, control: true, shift, alt: false });

  test.each(['a', 'd', 'l', 'z'])('Control+%s, which would mark the page, bookmark it or leave it', (key) => {
    expect(isKeptFromBrowser(held(key), canvas)).toBe(true);
    expect(isKeptFromBrowser(held(key), button)).toBe(true);
  });

  test('not those of fields and lists, nor those that mean nothing here', () => {
    expect(isKeptFromBrowser(held('a'), field)).toBe(false);
    expect(isKeptFromBrowser(held('a'), { tagName: 'SELECT' })).toBe(false);
    for (const key of ['t', 'r', 'w', 'F5']) expect(isKeptFromBrowser(held(key), canvas)).toBe(false);
    expect(isKeptFromBrowser({ ...held('a'), control: false }, canvas)).toBe(false);
  });
});

describe('how keys are written', () => {
  test.each([
    ['Control+Shift+Z', ['Ctrl', 'Shift', 'Z']],
    ['Shift+ArrowLeft', ['Shift', '←']],
    ['+', ['+']],
    ['Control++', ['Ctrl', '+']]
  ])('%s', (keys, written) => {
    expect(writtenKeys(keys)).toEqual(written);
  });
});

test('every drawing tool has a key', () => {
  const tools = ['select', 'rectangle', 'quadrupole', 'diagonal', 'circle', 'polygon', 'vehicle'] as const;
  const keys = tools.map(keysOfTool);
  expect(keys.every((key) => key !== undefined)).toBe(true);
  expect(new Set(keys).size).toBe(tools.length);
});
