/**
 * Charts as plain geometry: from numbers to marks on a drawing, which a template writes as SVG. All
 * of them can be told apart without colour, name their unit, and always show limits.
 */
@NullMarked
package leadline.chart;

import org.jspecify.annotations.NullMarked;
