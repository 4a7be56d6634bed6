/** Twelve fixed questions a nurse can point at, each with the answers a family can point at. */
export const STAFF_QUESTIONS = {
  where: [],
  'sore-now': ['sore-0', 'sore-1', 'sore-2', 'sore-3', 'dont-know'],
  'since-when': ['just-now', 'one-hour', 'since-morning', 'since-yesterday'],
  worse: ['worse', 'same', 'better', 'dont-know'],
  'toes-feel': ['yes', 'no', 'dont-know'],
  'toes-move': ['yes', 'no', 'dont-know'],
  tingle: ['yes', 'no', 'dont-know'],
  drank: ['yes', 'no', 'dont-know'],
  wee: ['yes', 'no', 'dont-know'],
  poo: ['yes', 'no', 'dont-know'],
  slept: ['yes', 'no', 'dont-know'],
  need: ['drink', 'toilet', 'medicine', 'rest', 'interpreter'],
} as const;
export type StaffQuestion = keyof typeof STAFF_QUESTIONS;
