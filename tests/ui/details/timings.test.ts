import { describe, expect, it } from 'vitest';
import { USUAL_TIMINGS } from '#plan/catalogue/timings';
import type { Output } from '#plan/schema';
import { timingFields, withTiming } from '#ui/details/timings';

const PRESENCE: Output = {
  mode: 'presence',
  delay_s: 1,
  extension_s: 2,
  longestPresence_s: 300,
  pulse_s: 0.2
};

describe('timings of an output', () => {
  it('that are usual have a field in one of the modes', () => {
    const keys = new Set([...timingFields('presence'), ...timingFields('pulse')].map(({ key }) => key));
    for (const key of Object.keys(USUAL_TIMINGS)) expect(keys).toContain(key);
    for (const key of ['delay_s', 'extension_s', 'longestPresence_s']) expect(keys).toContain(key);
  });

  it('are shown where they mean something', () => {
    const keysOf = (mode: Output['mode']) => timingFields(mode).map(({ key }) => key);
    expect(keysOf('presence')).not.toContain('pulse_s');
    expect(keysOf('pulse')).not.toContain('extension_s');
    expect(keysOf('pulse')).toContain('rearm_s');
  });

  it('can be set and taken back to the usual ones', () => {
    expect(withTiming(PRESENCE, 'rearm_s', 3).rearm_s).toBe(3);
    expect(withTiming(PRESENCE, 'pulse_s', null)).not.toHaveProperty('pulse_s');
    expect(withTiming(PRESENCE, 'longestPresence_s', null).longestPresence_s).toBeNull();
    expect(withTiming(PRESENCE, 'delay_s', null).delay_s).toBe(0);
  });

  it('leave the others alone', () => {
    const { extension_s, ...rest } = withTiming(PRESENCE, 'extension_s', 5);
    const { extension_s: before, ...old } = PRESENCE;
    expect([extension_s, before]).toEqual([5, 2]);
    expect(rest).toEqual(old);
  });
});
