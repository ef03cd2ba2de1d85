package leadline.history;

import leadline.fleet.Reading;

/** A reading that is used otherwise than it is written, or not at all, by a rule. */
public record ReadingNote(Reading reading, HourRule rule) {}
