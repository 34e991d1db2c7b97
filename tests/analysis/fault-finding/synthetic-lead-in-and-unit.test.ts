import { checkCauses } from './synthetic';

checkCauses(['longer lead-in', 'wrong setting', 'wrong meter frequency']);
