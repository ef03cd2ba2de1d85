/**
 * The words of the trade as types: vessels, machines, positions, items, records, the catalogue, and
 * the plain layout's columns.
 */
@NullMarked
package leadline.fleet;

import org.jspecify.annotations.NullMarked;
