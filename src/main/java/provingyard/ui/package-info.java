/**
 * The window: route sheet, yard, kit, inspector, ribbon and result. The only package that knows JavaFX. It draws
 * snapshots and ledger and never sees the world.
 */
package provingyard.ui;
