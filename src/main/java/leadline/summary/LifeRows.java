package leadline.summary;

import java.io.Serializable;
import java.util.List;

/** Rows of the tables of lives. */
public record LifeRows(List<TableRow> partLife, List<TableRow> springSurvival)
    implements Serializable {}
