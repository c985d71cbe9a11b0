/**
 * What the yard and the plots look like, without a screen: a small drawing surface of our own with a Java2D back end,
 * and stateless painters that draw scenario, set-up and snapshot on it. Window, report, thumbnail and command line show
 * the same yard. Knows season's snapshots and ledger, setup, scenario, quantity and numeric; no JavaFX.
 */
package provingyard.picture;
