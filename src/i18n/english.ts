/** English at once and whole, for what runs without a page: the report and the tests. */
import { en } from './en';
import { speak } from './message';

speak('en', en);
