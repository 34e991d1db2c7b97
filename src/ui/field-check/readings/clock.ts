/** The time on the wall where a reading is taken, and what is written down of it. */
const two = (value: number): string => String(value).padStart(2, '0');

/** "2025-11-26T08:12" on this device's clock; milliseconds since 1970. */
export function wallClock(now: number): string {
  const date = new Date(now);
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`;
}

/** With the zone of this device then, "2025-11-26T08:12:00+01:00": ISO 8601. */
export function stamped(wall: string): string {
  const minutes = -new Date(wall).getTimezoneOffset();
  if (Number.isNaN(minutes)) return wall;
  const size = Math.abs(minutes);
  return `${wall}:00${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
