import { emptySite } from '../empty';
import { situation } from './situation';

export const blank = situation('blank', () => emptySite());
