/**
 * The site as cells and geometry: takes the plan of a scenario; gives surfaces, soils and plants by cell, the way of
 * runoff, sky view, sun and shade, the share of rain that arrives, and shelter from wind, at a cell or at any point and
 * height. Immutable. Knows scenario, quantity and numeric; must not know weather, water or time of day.
 */
package provingyard.world.yard;
