// Every test begins with English words, as the program begins with those of its device.
import { speak } from './words';

await speak('en');
