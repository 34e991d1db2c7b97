/** Which timings an output has, and how one is changed. */
import type { BOUNDS } from '#plan/bounds';
import type { Output } from '#plan/schema';

type TimingKey = Exclude<keyof Output, 'mode'>;

export interface TimingField {
  readonly key: TimingKey;
  /** Of its messages. */
  readonly name: 'delay' | 'extension' | 'longestPresence' | 'pulse' | 'rearm' | 'recovery' | 'adaptation';
  readonly bounds: keyof Pick<typeof BOUNDS, 'seconds' | 'pulse' | 'timing' | 'adaptation'>;
  readonly isOptional: boolean;
}

const DELAY: TimingField = { key: 'delay_s', name: 'delay', bounds: 'seconds', isOptional: false };
const RECOVERY: TimingField = { key: 'recovery_s', name: 'recovery', bounds: 'timing', isOptional: true };

const FIELDS: Readonly<Record<Output['mode'], readonly TimingField[]>> = {
  presence: [
    DELAY,
    { key: 'extension_s', name: 'extension', bounds: 'seconds', isOptional: false },
    { key: 'longestPresence_s', name: 'longestPresence', bounds: 'seconds', isOptional: true },
    { key: 'adaptation_s', name: 'adaptation', bounds: 'adaptation', isOptional: true },
    RECOVERY
  ],
  pulse: [
    DELAY,
    { key: 'pulse_s', name: 'pulse', bounds: 'pulse', isOptional: true },
    { key: 'rearm_s', name: 'rearm', bounds: 'timing', isOptional: true },
    RECOVERY
  ]
};

/** Those that mean something in that mode; the others keep their values. */
export const timingFields = (mode: Output['mode']): readonly TimingField[] => FIELDS[mode];

/** Null takes an optional timing away, and a delay or an extension back to none. */
export function withTiming(output: Output, key: TimingKey, value: number | null): Output {
  if (key === 'longestPresence_s') return { ...output, [key]: value };
  if (value !== null) return { ...output, [key]: value };
  if (key === 'delay_s' || key === 'extension_s') return { ...output, [key]: 0 };
  const entries = Object.entries(output).filter(([name]) => name !== key);
  return Object.fromEntries(entries) as Output;
}
