@NullMarked
package leadline.chart;

import org.jspecify.annotations.NullMarked;
