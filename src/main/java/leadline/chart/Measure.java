package leadline.chart;

import java.util.function.DoubleFunction;

/**
 * What an axis measures.
 *
 * @param name with the unit, such as {@code breakdowns per million h}
 * @param inWords a number of it, for a tick
 */
public record Measure(String name, DoubleFunction<String> inWords) {}
