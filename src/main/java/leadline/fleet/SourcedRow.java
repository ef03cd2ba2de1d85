package leadline.fleet;

import leadline.origin.Origin;

/** What a well-formed row says, and where it came from. */
public record SourcedRow(Cells cells, Origin origin) {}
