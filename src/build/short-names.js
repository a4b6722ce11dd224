// What Code.js says often; minified, each is one letter there. Only what works without its object.
const { abs, max, min, floor, ceil, PI } = Math;
const { isArray } = Array;
const { isFinite: isFiniteNumber, isInteger } = Number;
const { entries, keys, fromEntries } = Object;

export {
  abs as "Math.abs",
  ceil as "Math.ceil",
  entries as "Object.entries",
  floor as "Math.floor",
  fromEntries as "Object.fromEntries",
  isArray as "Array.isArray",
  isFiniteNumber as "Number.isFinite",
  isInteger as "Number.isInteger",
  keys as "Object.keys",
  max as "Math.max",
  min as "Math.min",
  PI as "Math.PI",
};
