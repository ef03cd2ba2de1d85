@NullMarked
package leadline.settings;

import org.jspecify.annotations.NullMarked;
