import { describe, expect, it } from 'vitest';
import { shortfallOf } from '#ui/passing/calls/shortfall';
import { pictureOf } from './pictures';

const picture = pictureOf([], [], 300);

describe('what of the traffic is not simulated', () => {
  it('is nothing to speak of where a vehicle or two comes too late', () => {
    expect(shortfallOf({ ...picture, asked: { duration_s: 300, vehicles: 2 } })).toBeNull();
  });

  it('is said with both numbers', () => {
    const text = shortfallOf({ ...picture, asked: { duration_s: 300, vehicles: 250 } });
    expect(text).toContain('Of 250 vehicles');
    expect(text).toContain('0 do');
  });

  it('is said with both times', () => {
    const text = shortfallOf({ ...picture, asked: { duration_s: 86_400, vehicles: 0 } });
    expect(text).toMatch(/ 5:00 .* 1440:00\./);
  });
});
