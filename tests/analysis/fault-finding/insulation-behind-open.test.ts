import { expect, test } from 'vitest';
import type { Design } from '#analysis/fault-finding/network/design';
import { toGround } from '#analysis/fault-finding/network/insulation';
import type { State } from '#analysis/fault-finding/network/state';

test('where one conductor of the lead-in is open, the other still leads to the leaks of the loops', () => {
  const state = {
    loops: [{ leak: 2e6 }, { leak: null }],
    leadIn: { leak: 3e6, isOpen: true },
    other: null
  } as unknown as State;
  const at = { testPoint: 'cabinet', loop: null } as const;
  // 2 MΩ beside 3 MΩ
  expect(toGround({ loops: [] } as unknown as Design, state, at)).toBeCloseTo(1.2e6, 3);
});
