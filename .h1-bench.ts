import { measurePassing } from './tests/bench/passing';
measurePassing();
