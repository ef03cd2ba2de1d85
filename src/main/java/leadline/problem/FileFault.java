package leadline.problem;

import java.io.Serializable;
import java.util.List;

/** Why a file of an inbox could not be used. Other files of the inbox are not touched by it. */
public sealed interface FileFault extends Serializable {

  /** The file's path below the inbox. */
  String file();

  /** The column at fault; empty where the whole file is at fault. */
  default String column() {
    return "";
  }

  /** What is wrong with it and what to do. */
  String remedy();

  /** The rule's name, such as {@code missing-column}. */
  default String rule() {
    return RuleName.of(getClass());
  }

  /** File, line, column, what is wrong and what to do, in words for the ship. */
  default String sentence() {
    return file()
        + ", line 1"
        + (column().isEmpty() ? "" : ", column " + column())
        + ": "
        + remedy();
  }

  /** The file's name begins with no record's word. */
  record UnrecognisedFile(String file, List<String> words) implements FileFault {
    public UnrecognisedFile {
      words = List.copyOf(words);
    }

    @Override
    public String remedy() {
      return "the name does not say what the file holds; begin it with one of "
          + String.join(", ", words)
          + ", as in "
          + words.get(0)
          + "_2024.csv, or take the file away.";
    }
  }

  /**
   * The system does not let the file be read.
   *
   * @param reason what the system says
   */
  record UnreadableFile(String file, String reason) implements FileFault {
    @Override
    public String remedy() {
      return "the file cannot be read (" + reason + "); let it be read, or take it away.";
    }
  }

  /** No line with text. */
  record EmptyFile(String file) implements FileFault {
    @Override
    public String remedy() {
      return "the file is empty; export it again, with a header line even if there are no rows.";
    }
  }

  /** NUL bytes in the header: UTF-16, a workbook under another name, or a damaged file. */
  record NotPlainText(String file) implements FileFault {
    @Override
    public String remedy() {
      return "the header holds NUL bytes, so the file is UTF-16 or no text at all; save it as CSV"
          + " in UTF-8.";
    }
  }

  /**
   * Bytes in the header that are not UTF-8.
   *
   * @param text the first of them, shown as {@code \xNN}, and what stands around it
   */
  record HeaderNotUtf8(String file, String text) implements FileFault {
    @Override
    public String remedy() {
      return "the header is not UTF-8 at " + Excerpt.of(text) + "; save the file as CSV in UTF-8.";
    }
  }

  /**
   * The header line cannot be split into names.
   *
   * @param reason what is wrong with the line
   */
  record BrokenHeader(String file, String reason) implements FileFault {
    @Override
    public String remedy() {
      return "the header cannot be read. " + reason;
    }
  }

  /**
   * No name in the header is known.
   *
   * @param header the line as it stands
   */
  record NoKnownColumn(String file, String header, List<String> known) implements FileFault {
    public NoKnownColumn {
      known = List.copyOf(known);
    }

    @Override
    public String remedy() {
      return "no column name is known in "
          + Excerpt.of(header)
          + "; begin the file with a header of names with commas between them, from: "
          + String.join(", ", known)
          + ".";
    }
  }

  /** A column is missing without which no row means anything. */
  record MissingColumn(String file, String column) implements FileFault {
    @Override
    public String remedy() {
      return "the header lacks this column, which every row needs; add it and export again.";
    }
  }

  /** Two columns have one name. */
  record DuplicateColumn(String file, String column) implements FileFault {
    @Override
    public String remedy() {
      return "the header has this name more than once, so it is open which one counts; keep one"
          + " and rename the other.";
    }
  }

  /** A workbook that cannot be unpacked or whose sheet cannot be read. */
  record DamagedWorkbook(String file) implements FileFault {
    @Override
    public String remedy() {
      return "the file is no workbook or a damaged one; save it again as .xlsx, or send the sheet as"
          + " CSV.";
    }
  }

  /** A workbook that is encrypted, or of the format before .xlsx. */
  record LockedWorkbook(String file) implements FileFault {
    @Override
    public String remedy() {
      return "the workbook is locked with a password, or of the older format .xls; save it as .xlsx"
          + " without a password, or send the sheet as CSV.";
    }
  }

  /** A workbook larger than any that a ship fills in. */
  record WorkbookTooLarge(String file) implements FileFault {
    @Override
    public String remedy() {
      return "the workbook is larger than any return sheet; take out pictures and other sheets, or"
          + " send the sheet as CSV.";
    }
  }

  /** No sheet of the workbook holds what the file's name says. */
  record NoSuchSheet(String file, String sheet, List<String> sheets) implements FileFault {
    public NoSuchSheet {
      sheets = List.copyOf(sheets);
    }

    @Override
    public String remedy() {
      return "the workbook has no sheet "
          + sheet
          + ", only "
          + Excerpt.of(String.join(", ", sheets))
          + "; give the sheet that holds the rows this name.";
    }
  }
}
