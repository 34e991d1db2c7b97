import { expect, test } from 'vitest';
import { en } from '#i18n/en';
import { t } from '#i18n/message';

test('values are filled in', () => {
  expect(t('step.change', { field: 'turns', subject: 'Stop line left' })).toBe(
    'Change turns of Stop line left'
  );
});

test('a count chooses the form', () => {
  expect(t('finding.count.problem', { count: 1 })).toBe('1 problem');
  expect(t('finding.count.problem', { count: 0 })).toBe('0 problems');
});

test('text in a value is not filled in again', () => {
  expect(t('outline.at', { position: '{position}' })).toBe('at {position}');
});

test('no message is empty or has a stray brace', () => {
  const texts = Object.values(en).flatMap((message): string[] =>
    typeof message === 'string' ? [message] : [message.one, message.other]
  );
  for (const text of texts) {
    expect(text.trim()).not.toBe('');
    // a brace in quotation marks is meant as one: what a file may hold
    expect(text.replace(/\{[a-zA-Z]+\}|"[{}]"/g, '')).not.toMatch(/[{}]/);
  }
});
