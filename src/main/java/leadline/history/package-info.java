/**
 * From records to machine hours, items and part lives: pure code over the records of a vessel,
 * which knows neither files nor engines.
 */
@NullMarked
package leadline.history;

import org.jspecify.annotations.NullMarked;
