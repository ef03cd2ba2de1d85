@NullMarked
package leadline.sample;

import org.jspecify.annotations.NullMarked;
