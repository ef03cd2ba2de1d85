/**
 * Pages for people: each one file that asks for nothing else, readable without a script, its
 * figures those of the published tables.
 */
@NullMarked
package leadline.page;

import org.jspecify.annotations.NullMarked;
