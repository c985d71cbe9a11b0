/**
 * A service call on a site: everything that may be wrong there, what a technician can do and read, and the yard that
 * lives on meanwhile. Takes a scenario and a deal, gives premises for the diagnosis and readings computed by the
 * simulator's own models of pipes, wires and sensors; no symptom is written by hand. Must not know pages or the screen.
 */
package provingyard.call;
