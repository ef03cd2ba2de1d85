package leadline.sample;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An individual component with the pieces now in it. */
final class Item {

  private final String label;
  private final Piece[] pieces;
  private final int[] lives;

  Item(String label, List<Piece> pieces) {
    this.label = label;
    this.pieces = pieces.toArray(Piece[]::new);
    this.lives = new int[this.pieces.length];
  }

  String label() {
    return label;
  }

  int size() {
    return pieces.length;
  }

  /** The pieces, in the catalogue's order of the parts. */
  Stream<Piece> pieces() {
    return Stream.of(pieces);
  }

  Piece piece(int index) {
    return pieces[index];
  }

  void renew(int index, Piece piece) {
    pieces[index] = piece;
  }

  /** The number of the life that a part is in, on record. */
  int life(int index) {
    return lives[index] + 1;
  }

  void countLife(int index) {
    lives[index]++;
  }

  void run(long tenths, Fuel fuel) {
    for (Piece piece : pieces) {
      piece.run(tenths, fuel);
    }
  }

  /** Tenths until one of the parts takes it out of service, if any will. */
  Optional<Long> tenthsToBreakdown(Fuel fuel) {
    return pieces().flatMap(piece -> piece.tenthsToBreakdown(fuel).stream()).min(Long::compare);
  }
}
