import { expect, test } from 'vitest';
import { commands } from '#editor/commands/index';
import { COMMAND_GROUPS, commandsOf } from '#ui/dialogs/command-groups';

test('the list of keys holds every command once', () => {
  const listed = COMMAND_GROUPS.flatMap(commandsOf).map(({ id }) => id);
  expect([...listed].sort()).toEqual(commands.map(({ id }) => id).sort());
});

test('commands stand where they are looked for', () => {
  const groupOf = (id: string) =>
    COMMAND_GROUPS.find((group) => commandsOf(group).some((each) => each.id === id));
  expect(groupOf('undo')).toBe('edit');
  expect(groupOf('tool-lane')).toBe('tools');
  expect(groupOf('insert-rectangle')).toBe('insert');
  expect(groupOf('fit-all')).toBe('view');
  expect(groupOf('nudge-left')).toBe('move');
  expect(groupOf('join-in-series')).toBe('wiring');
});
