/** English at once and whole: what the report begins with, and what the tests speak. */
import { en } from './en';
import { speak } from './message';

speak('en', en);
