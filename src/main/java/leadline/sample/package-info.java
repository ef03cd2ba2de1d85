/** The invented fleet, of any size: what really happened on it, and what its ships wrote down. */
@NullMarked
package leadline.sample;

import org.jspecify.annotations.NullMarked;
