/**
 * One season: takes a scenario, a seed and a list of (tick, set-up); gives events, ledger, series and snapshots. The
 * one package that owns time and the order of work within a minute. Must not know score, screen or class.
 */
package provingyard.season;
