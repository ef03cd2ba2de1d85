package leadline.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.quantity.ReportMonth;

/**
 * A folder of published months. Each run lies whole and unchanging in {@code .runs/RUN}; a relative
 * link named after the month leads to the run that speaks for it, and {@code latest} to that of the
 * newest month. A program that reads several files of a month should resolve the link once.
 */
public final class Publication {

  private static final String LATEST = "latest";
  private static final DateTimeFormatter IN_A_NAME =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Documents documents;
  private final Boundary boundary;

  public Publication(Path folder, Documents documents) {
    this(folder, documents, Boundary.UNWATCHED);
  }

  public Publication(Path folder, Documents documents, Boundary boundary) {
    this.folder = folder;
    this.documents = documents;
    this.boundary = boundary;
  }

  /**
   * Writes the run's folder, unless it is there already, and moves the links that it may move.
   * Waits while another process publishes into the same folder. What a process that died left
   * behind is cleared away.
   *
   * @return the links that now lead to the run
   * @throws java.nio.file.FileSystemException where links are refused or something else is in their
   *     place, in words for the user
   */
  public List<Path> publish(Issue issue) throws IOException {
    Path runs = Files.createDirectories(folder.resolve(".runs"));
    try (FileChannel lock =
        FileChannel.open(
            runs.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      lock.lock();
      Path staging = runs.resolve(".unfinished");
      FolderTree.delete(staging);
      Files.createDirectory(staging);
      placeRun(issue, runs, staging);
      List<Path> links = moveLinks(issue, staging);
      FolderTree.delete(staging);
      return links;
    }
  }

  /**
   * The runs that were published into a folder.
   *
   * @throws java.nio.file.NoSuchFileException where nothing was
   */
  public static Set<String> runsIn(Path folder) throws IOException {
    try (Stream<Path> runs = Files.list(folder.resolve(".runs"))) {
      return runs.map(run -> run.getFileName().toString())
          .filter(name -> !name.startsWith("."))
          .collect(Collectors.toUnmodifiableSet());
    }
  }

  private void placeRun(Issue issue, Path runs, Path staging) throws IOException {
    Path run = runs.resolve(issue.manifest().run());
    if (Files.exists(run)) {
      return;
    }
    Path staged = Files.createDirectory(staging.resolve(issue.manifest().run()));
    RunFolder.write(issue, staged, documents, boundary);
    FolderTree.force(staged);
    boundary.reached("run staged");
    Files.move(staged, run, StandardCopyOption.ATOMIC_MOVE);
    boundary.reached("run in place");
  }

  private List<Path> moveLinks(Issue issue, Path staging) throws IOException {
    Path run = folder.getFileSystem().getPath(".runs", issue.manifest().run());
    List<Path> moved = new ArrayList<>();
    for (String name : linksOf(issue)) {
      RelativeLink link = new RelativeLink(folder.resolve(name));
      if (!link.leadsTo(run)) {
        link.swapTo(run, staging, boundary);
      }
      moved.add(link.link());
    }
    return List.copyOf(moved);
  }

  private List<String> linksOf(Issue issue) throws IOException {
    ReportMonth month = issue.manifest().month();
    return switch (issue.standing()) {
      case CURRENT ->
          latestIsAfter(month) ? List.of(month.toString()) : List.of(month.toString(), LATEST);
      case AS_KNOWN_THEN ->
          List.of(month + "-known-at-" + IN_A_NAME.format(issue.manifest().knownAt()));
    };
  }

  private boolean latestIsAfter(ReportMonth month) throws IOException {
    return RunFile.monthOf(folder.resolve(LATEST))
        .filter(latest -> latest.compareTo(month) > 0)
        .isPresent();
  }
}
