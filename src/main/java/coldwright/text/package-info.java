/**
 * Typed text: its file, its bytes and the word most likely meant; numbers as text for people; files
 * that are written whole or not at all. Independent of lessons and recipes.
 */
package coldwright.text;
