import { expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '#ui/settings';
import { paperInSight } from '#ui/sheet/print';

test('the key prints the record to whoever looks at it, to everybody else the sheet', () => {
  const under = (over: Partial<typeof DEFAULT_SETTINGS>) =>
    paperInSight({ settings: { ...DEFAULT_SETTINGS, ...over } });
  const record = { view: 'field-check', fieldCheckMode: 'record' } as const;
  expect(under(record)).toBe('record');
  expect(under({ ...record, isLowerPanelOpen: false })).toBe('sheet');
  expect(under({ ...record, view: 'circuits' })).toBe('sheet');
  expect(under({ ...record, fieldCheckMode: 'causes' })).toBe('sheet');
});
