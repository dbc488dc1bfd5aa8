/** Days that the weather must be fair on, as a part of a phrase: "the first dry day", "in a dry week", "a still day". */
const WEATHER = 'dry | warm | fine | still | calm | windless | frost-free | rainless';
const DAY = 'day | days | spell | morning | afternoon | evening | night | week | weekend';

/** Its day stands in the part `day`. */
export const FAIR_DAY = `(?: the | a | an | one | next | first | couple of | few )+ (?<day> (?: ${WEATHER} ) (?: ${WEATHER} )? (?: ${DAY} ) )`;
