/**
 * All that a trainee decides: what is placed, where, how it is set, what the controller does; immutable, with its
 * history and undo. Takes scenario documents and set-up files, gives set-ups and located problems. Knows quantity and
 * scenario; must not know the world or the season.
 */
package provingyard.setup;
