/** 'drag' follows the pointer, 'drop' ends it where it is, 'back' gives it up; 'key' is a step of its own. Stored units. */
export type Move = (value: number, how: 'drag' | 'drop' | 'back' | 'key') => void;
