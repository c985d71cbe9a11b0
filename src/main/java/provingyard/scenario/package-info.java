/**
 * The scenario document: takes JSON files, gives immutable records of site, plumbing, weather, schedule, kit, faults
 * and lesson, or located problems; and writes records back. Knows quantity only.
 *
 * <p>Conventions of the document: x runs east and y north in metres from the yard's south-west corner; angles are
 * compass bearings in degrees (0 north, 90 east) unless said; times are standard time of the place all year.
 */
package provingyard.scenario;
