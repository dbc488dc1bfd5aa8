// Runs after `npm ci`: builds the command line.
import './build.mjs';
